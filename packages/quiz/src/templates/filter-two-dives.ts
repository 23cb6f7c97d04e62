import type { FilterKind } from "@sunfathom/planner";
import type { Template } from "../item/template.js";
import { filterFor } from "../light/remembered.js";
import { byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
const DENSITY = 0.9;
const KINDS = ["none", "red", "magenta"] as const;
type Kind = (typeof KINDS)[number];
const DIVES = [
  ["IB", 8],
  ["II", 12],
  ["1C", 6],
  ["1C", 10],
  ["3C", 8],
] as const;
/** Where two filters come nearer than this, the choice would hang on a digit. */
const CLEARLY = 0.3;
const tenth = (value: number): number => Number(value.toFixed(1));

/** What colour error a filter leaves on a dive, by the planner with this one filter in the kit. */
function error(water: Water, depth_m: number, kind: Kind): number | undefined {
  const owned = (filter_kind: FilterKind) => ({ id: filter_kind, item: "lens_filter" as const, filter_kind });
  const kit = kind === "none" ? owned("red") : owned(kind);
  const answer = filterFor({ ...byDay(water, SUN_DEG, depth_m), kit: [{ ...kit, filter_density: DENSITY }] });
  if (kind === "none") return tenth(answer.colour_error_without_delta_e00.likely);
  const own = answer.filter_kind === kind ? answer : answer.runner_up;
  return own.filter_kind === kind ? tenth(own.colour_error_delta_e00.likely) : undefined;
}

const EQUAL = [1, 1] as const;
const MINUTES = [
  [30, 10],
  [10, 30],
  [20, 10],
  [10, 20],
] as const;

interface Row {
  kind: Kind;
  first: number;
  second: number;
}
const unweighed = (rows: readonly Row[], kind: Kind): number => {
  const row = rows.find((one) => one.kind === kind);
  return row === undefined ? Number.NaN : (row.first + row.second) / 2;
};

/** One filter for two dives. Errors are stated, so their uncertainty does not matter. */
export const filterTwoDives: Template = {
  id: "filter_two_dives",
  topic: "filter",
  interaction: "numeric",
  levels: ["working", "expert"],
  advises: ["filter_on_land"],
  make({ draw, level, say, show }) {
    const [first, second] = draw.shuffle(draw.sample(DIVES, 2));
    if (first === undefined || second === undefined) return undefined;
    const rows = KINDS.map((kind) => ({
      kind,
      first: error(first[0], first[1], kind) ?? Number.NaN,
      second: error(second[0], second[1], kind) ?? Number.NaN,
    }));
    // Experts film longer on one of the dives, and weigh it so.
    const [first_min, second_min] = level === "expert" ? draw.pick(MINUTES) : EQUAL;
    const meanOf = (a: number, b: number): number =>
      (first_min * a + second_min * b) / (first_min + second_min);
    const means = rows.map((row) => ({ kind: row.kind, mean: meanOf(row.first, row.second) }));
    const sorted = [...means].sort((a, b) => a.mean - b.mean);
    const [best, next] = sorted;
    if (!best || !next || !(next.mean - best.mean > CLEARLY)) return undefined;
    // Half way between two decimals, rounding would decide.
    if (Math.abs(((10 * best.mean) % 1) - 0.5) < 0.01) return undefined;
    const text = say.more.filter_two_dives;
    const name = ([water, depth_m]: (typeof DIVES)[number]): string =>
      text.dive({ depth: show.m(depth_m), water: say.common.water[water] });
    const of = (kind: Kind): number => means.find((m) => m.kind === kind)?.mean ?? Number.NaN;
    const least = (pick: (row: (typeof rows)[number]) => number) =>
      [...rows].sort((a, b) => pick(a) - pick(b))[0];
    const onFirst = least((row) => row.first);
    // Where one filter is best on both, there is nothing to weigh.
    if (onFirst?.kind === least((row) => row.second)?.kind) return undefined;
    return {
      given: {
        minutes: [first_min, second_min],
        dives: [`${first[0]} ${first[1]}`, `${second[0]} ${second[1]}`],
        errors: rows.flatMap((row) => [row.first, row.second]),
      },
      stem: (level === "expert" ? text.weighedStem : text.stem)({
        first: name(first),
        second: name(second),
        firstMinutes: first_min,
        secondMinutes: second_min,
        rows: rows.map((row) =>
          text.row[row.kind]({ first: show.fixed(row.first, 1), second: show.fixed(row.second, 1) }),
        ),
      }),
      answer: {
        interaction: "numeric",
        value: best.mean,
        unit: "",
        decimals: 1,
        tolerance: 0.1,
        anticipated: [
          { misconception: "first_dive_alone", value: onFirst === undefined ? Number.NaN : of(onFirst.kind) },
          ...(level === "expert"
            ? ([{ misconception: "minutes_ignored", value: unweighed(rows, best.kind) }] as const)
            : ([{ misconception: "errors_added", value: 2 * best.mean }] as const)),
          {
            misconception: "best_of_each_dive",
            value: meanOf(least((row) => row.first)?.first ?? 0, least((row) => row.second)?.second ?? 0),
          },
        ],
      },
      steps: [
        {
          operation: level === "expert" ? "multiply" : "add",
          text: text.means({
            none: show.fixed(of("none"), 2),
            red: show.fixed(of("red"), 2),
            magenta: show.fixed(of("magenta"), 2),
          }),
        },
        { operation: "judge", text: text.last({ best: show.fixed(best.mean, 1) }) },
      ],
      sources: ["filter_merit", "filter_shapes", "jerlov_1976"],
      basis: "computed",
    };
  },
};

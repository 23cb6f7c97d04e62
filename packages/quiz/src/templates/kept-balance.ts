import type { MisconceptionId } from "@sunfathom/words";
import type { Draft, OptionDraft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";
import { balanceFor } from "../light/remembered.js";
import { anyBalance, byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
/** Two depths, the shallower one first. */
type Way = readonly [upper_m: number, lower_m: number];
const LONG_M: readonly Way[] = [
  [3, 10],
  [4, 12],
  [5, 15],
  [6, 18],
];
/** So deep that two metres more hardly matter. */
const LITTLE_M: readonly Way[] = [
  [16, 18],
  [18, 20],
];
/** A shift of red against green that everybody sees, and one that nobody does, in stops. */
const SEEN_STOPS = 0.4;
const UNSEEN_STOPS = 0.15;

const ANSWERS = ["red", "cold", "same"] as const;
type Answer = (typeof ANSWERS)[number];
type Case = "up" | "down" | "night" | "little";
const CASES: Record<string, readonly Case[]> = {
  beginner: ["up", "down", "night"],
  working: ["up", "down", "night", "little", "up", "down"],
};
const KEY: Record<Case, Answer> = { up: "red", down: "cold", night: "same", little: "same" };
const MISTAKE: Record<Case, Partial<Record<Answer, MisconceptionId>>> = {
  up: { cold: "shift_turned_about", same: "one_balance_for_all" },
  down: { red: "shift_turned_about", same: "one_balance_for_all" },
  night: { red: "depth_shifts_lamp_balance", cold: "depth_shifts_lamp_balance" },
  little: { red: "every_metre_balanced", cold: "every_metre_balanced" },
};

/** By how many stops a balance there raises red against green. */
const redRaised = (water: Water, depth_m: number): number => {
  const { red_gain, green_gain } = balanceFor(anyBalance(byDay(water, SUN_DEG, depth_m))).depths[0];
  return Math.log2(red_gain.likely / green_gain.likely);
};

/** A white balance that is kept where another one is due: what white looks like. Experts are asked by how much. */
export const keptBalance: Template = {
  id: "kept_balance",
  topic: "balance",
  interaction: "single_choice",
  levels: ["beginner", "working", "expert"],
  advises: ["balance", "way_up", "light"],
  make: (maker) => (maker.level === "expert" ? byHowMuch(maker) : whichWay(maker)),
};

function whichWay(maker: Maker): Draft | undefined {
  const { draw, level, say, show } = maker;
  const where = draw.pick(CASES[level] ?? []);
  const water = draw.pick(["IB", "II", "1C"] as const);
  const [upper_m, lower_m] = draw.pick(where === "little" ? LITTLE_M : LONG_M);
  const [from_m, to_m] = where === "up" ? [lower_m, upper_m] : [upper_m, lower_m];
  const shift = redRaised(water, from_m) - redRaised(water, to_m);
  if (where === "little" ? Math.abs(shift) > UNSEEN_STOPS : Math.abs(shift) < SEEN_STOPS) return undefined;
  const text = say.dive.kept_balance;
  const key = KEY[where];
  const words = { from: show.m(from_m), to: show.m(to_m), water: say.common.water[water] };
  const options: OptionDraft[] = ANSWERS.map((value) => {
    const mistake = MISTAKE[where][value];
    const option = { value, text: draw.pick(text.option[value]), right: value === key };
    return mistake === undefined ? option : { ...option, misconception: mistake };
  });
  return {
    given: { case: where, water, from_m, to_m },
    stem: where === "night" ? text.nightStem(words) : text.stem(words),
    answer: { interaction: "single_choice", options },
    steps: [
      ...(where === "night"
        ? []
        : [
            {
              operation: "compare" as const,
              text: text.raised({
                ...words,
                fromStops: show.stops(redRaised(water, from_m)),
                toStops: show.stops(redRaised(water, to_m)),
              }),
            },
          ]),
      { operation: level === "beginner" ? "compare" : "judge", text: text.last[where] },
    ],
    sources: ["jerlov_1976", "mean_sensor"],
    basis: "computed",
  };
}

/** The gains are stated, so their uncertainty does not matter. */
function byHowMuch({ draw, say, show }: Maker): Draft | undefined {
  const water = draw.pick(["IB", "II", "1C", "3C"] as const);
  const [upper_m, lower_m] = draw.pick(LONG_M);
  const up = draw.below(2) === 0;
  const [from_m, to_m] = up ? [lower_m, upper_m] : [upper_m, lower_m];
  const tenth = (value: number): number => Number(value.toFixed(1));
  const [from, to] = [tenth(redRaised(water, from_m)), tenth(redRaised(water, to_m))];
  const off = tenth(Math.abs(from - to));
  if (off < SEEN_STOPS) return undefined;
  const text = say.dive.kept_balance;
  const strong = (stops: number, misconception?: MisconceptionId): OptionDraft =>
    option(`strong ${stops}`, text.strong({ stops: show.stops(stops) }), misconception);
  const weak = (stops: number, misconception?: MisconceptionId): OptionDraft =>
    option(`weak ${stops}`, text.weak({ stops: show.stops(stops) }), misconception);
  const [right, other] = up ? [strong, weak] : [weak, strong];
  const words = { from: show.m(from_m), to: show.m(to_m), water: say.common.water[water] };
  return {
    given: { water, from_m, to_m, from_stops: from, to_stops: to },
    stem: text.amountStem({ ...words, fromStops: show.stops(from), toStops: show.stops(to) }),
    answer: {
      interaction: "single_choice",
      options: [
        right(off),
        other(off, "shift_turned_about"),
        right(to, "new_balance_alone"),
        ...(draw.below(2) === 0
          ? [right(tenth(from + to), "losses_added_for_difference")]
          : [other(to, "shift_turned_about")]),
      ],
    },
    steps: [
      {
        operation: "add",
        text: text.difference({
          more: show.number(Math.max(from, to), 1),
          less: show.number(Math.min(from, to), 1),
          stops: show.stops(off),
        }),
      },
      { operation: "judge", text: up ? text.last.up : text.last.down },
    ],
    sources: ["jerlov_1976", "mean_sensor"],
    basis: "computed",
  };
}

const option = (value: string, text: string, misconception?: MisconceptionId): OptionDraft =>
  misconception === undefined ? { value, text, right: true } : { value, text, right: false, misconception };

import type { Template } from "../item/template.js";
import { lightAt } from "../light/remembered.js";
import { byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
const LEGS_M: Record<string, readonly (readonly [number, number])[]> = {
  beginner: [
    [1, 3],
    [5, 7],
    [10, 12],
    [18, 20],
  ],
  working: [
    [1, 4],
    [4, 6],
    [8, 10],
    [12, 16],
    [18, 20],
  ],
  expert: [
    [2, 5],
    [8, 14],
    [1, 3],
    [6, 9],
    [5, 7],
    [12, 16],
    [14, 18],
    [18, 20],
  ],
};
/** One change must be this much larger than the next. */
const CLEARLY = 1.2;
const COUNT = { beginner: 3, working: 4, expert: 5 };

/** By how much red falls behind green on a part of the way down, in stops. */
const colourChange = (water: Water, from_m: number, to_m: number): number => {
  const at = (m: number): number => {
    const light = lightAt(byDay(water, SUN_DEG, m)).depths[0];
    return (light?.red_loss_stops.likely ?? 0) - (light?.green_loss_stops.likely ?? 0);
  };
  return Math.abs(at(to_m) - at(from_m));
};

/** Where on the way down and up a white balance lasts, and where it does not. */
export const balanceLasts: Template = {
  id: "balance_lasts",
  topic: "balance",
  interaction: "ordering",
  levels: ["beginner", "working", "expert"],
  advises: ["balance", "way_up"],
  make({ draw, level, say, show }) {
    const water = draw.pick(["IB", "II"] as const);
    const legs = draw
      .sample(LEGS_M[level] ?? [], COUNT[level])
      .map(([from_m, to_m]) => ({ from_m, to_m, stops: colourChange(water, from_m, to_m) }))
      .sort((a, b) => b.stops - a.stops);
    if (legs.some(({ stops }, i) => i > 0 && (legs[i - 1]?.stops ?? 0) < CLEARLY * stops)) return undefined;
    const text = say.more.balance_lasts;
    const named = legs.map(({ from_m, to_m }) => text.entry({ from: show.m(from_m), to: show.m(to_m) }));
    const keys = legs.map(({ from_m, to_m }) => `${from_m} ${to_m}`);
    const byLength = [...legs].sort((a, b) => b.to_m - b.from_m - (a.to_m - a.from_m));
    return {
      given: { water, legs: keys },
      stem: text.stem({ water: say.common.water[water] }),
      answer: {
        interaction: "ordering",
        entries: keys.map((key, i) => ({ key, text: named[i] ?? key })),
        anticipated: [
          { misconception: "deep_changes_most", keys: [...keys].reverse() },
          {
            misconception: "longest_way_changes_most",
            keys: byLength.map(({ from_m, to_m }) => `${from_m} ${to_m}`),
          },
        ],
      },
      steps: [
        {
          operation: level === "beginner" ? "compare" : "judge",
          text: text.changes({
            changes: legs.map(({ stops }, i) => ({ part: named[i] ?? "", stops: show.stops(stops, 2) })),
          }),
        },
        { operation: "recall", text: text.last },
      ],
      sources: ["jerlov_1976", "mean_sensor", "kirk_1984"],
      basis: "computed",
    };
  },
};

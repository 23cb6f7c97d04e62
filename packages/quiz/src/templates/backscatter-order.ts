import type { Template } from "../item/template.js";
import { mixAt } from "../light/remembered.js";
import { byDay, twoLamps, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
const DEPTH_M = 12;
const WATERS_HERE = ["IB", "II", "3C", "5C"] as const;
const DISTANCES_M = [0.4, 0.8, 1.5];
/** One veil must be this much thicker than the next, as the model's likely value: what is not known shifts all alike. */
const CLEARLY = 1.8;
const COUNT = { beginner: 3, working: 4, expert: 5 };

const haze_percent = (water: Water, distance_m: number): number => {
  const scene = { ...byDay(water, SUN_DEG, DEPTH_M), subject_distance_m: distance_m };
  return mixAt({ ...scene, lamps: [twoLamps(distance_m)] }).depths[0].lit_haze_percent?.likely ?? Number.NaN;
};

/** Backscatter by distance and water. */
export const backscatterOrder: Template = {
  id: "backscatter_order",
  topic: "lamps",
  interaction: "ordering",
  levels: ["beginner", "working", "expert"],
  advises: ["light", "closer"],
  make({ draw, level, say, show }) {
    const one = level === "beginner";
    const water = draw.pick(WATERS_HERE);
    const all = (one ? [water] : WATERS_HERE).flatMap((w) =>
      DISTANCES_M.map((distance_m) => ({ water: w, distance_m, haze: haze_percent(w, distance_m) })),
    );
    const drawn = draw.sample(all, COUNT[level]).sort((a, b) => a.haze - b.haze);
    if (drawn.some(({ haze }, i) => !(i === 0 || haze > CLEARLY * (drawn[i - 1]?.haze ?? 0))))
      return undefined;
    const text = say.more.backscatter_order;
    const keyOf = (entry: (typeof drawn)[number]): string => `${entry.water} ${entry.distance_m}`;
    const named = drawn.map((entry) =>
      text.entry({ water: say.common.water[entry.water], distance: show.m(entry.distance_m) }),
    );
    const byWater = [...drawn].sort(
      (a, b) => WATERS_HERE.indexOf(a.water) - WATERS_HERE.indexOf(b.water) || b.distance_m - a.distance_m,
    );
    return {
      given: { entries: drawn.map(keyOf) },
      stem: text.stem,
      answer: {
        interaction: "ordering",
        entries: drawn.map((entry, i) => ({ key: keyOf(entry), text: named[i] ?? "" })),
        anticipated: [
          { misconception: "distance_does_not_count", keys: byWater.map(keyOf) },
          { misconception: "farther_is_clearer", keys: [...drawn].reverse().map(keyOf) },
        ],
      },
      steps: [
        {
          operation: one ? "compare" : "judge",
          text: text.haze({
            each: drawn.map(({ haze }, i) => ({ name: named[i] ?? "", percent: show.percent(haze) })),
          }),
        },
        { operation: "recall", text: text.last },
      ],
      sources: ["lit_haze", "path_attenuation", "jerlov_1976"],
      basis: "computed",
    };
  },
};

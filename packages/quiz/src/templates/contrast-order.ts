import { exposureLoss } from "@sunfathom/planner";
import type { Template } from "../item/template.js";
import { remembered } from "../light/remember.js";
import { byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
const DEPTH_M = 8;
const WATERS_HERE = ["IB", "II", "1C", "3C"] as const;
const DISTANCES_M = [0.5, 1, 2, 3];
/** One contrast must be this many times the next, as the model's likely value: what is not known shifts all alike. */
const CLEARLY = 1.35;
/** With less of it left nothing is seen of the subject. */
const LEAST_PERCENT = 4;
const COUNT = { beginner: 3, working: 4, expert: 5 };

const contrast_percent = remembered(
  (water: Water, distance_m: number): number =>
    exposureLoss({ ...byDay(water, SUN_DEG, DEPTH_M), subject_distance_m: distance_m }).depths[0]
      .contrast_left_percent.likely,
);

/** What the water between subject and camera leaves of its contrast by daylight. */
export const contrastOrder: Template = {
  id: "contrast_order",
  topic: "light",
  interaction: "ordering",
  levels: ["beginner", "working", "expert"],
  advises: ["closer"],
  make({ draw, level, say, show }) {
    // Beginners look at one water, experts weigh distance against water.
    const waters = level === "beginner" ? [draw.pick(WATERS_HERE)] : WATERS_HERE;
    const all = waters.flatMap((water) =>
      DISTANCES_M.map((distance_m) => ({ water, distance_m, percent: contrast_percent(water, distance_m) })),
    );
    const seen = all.filter(({ percent }) => percent >= LEAST_PERCENT);
    const drawn = draw.sample(seen, COUNT[level]).sort((a, b) => b.percent - a.percent);
    if (drawn.length < COUNT[level]) return undefined;
    if (drawn.some(({ percent }, i) => i > 0 && (drawn[i - 1]?.percent ?? 0) < CLEARLY * percent))
      return undefined;
    const text = say.dive.contrast_order;
    const keyOf = (entry: (typeof drawn)[number]): string => `${entry.water} ${entry.distance_m}`;
    const named = drawn.map(({ water, distance_m }) =>
      text.entry({ water: say.common.water[water], distance: show.m(distance_m) }),
    );
    const byDistance = [...drawn].sort((a, b) => a.distance_m - b.distance_m);
    return {
      given: { entries: drawn.map(keyOf) },
      stem: text.stem({ depth: show.m(DEPTH_M) }),
      answer: {
        interaction: "ordering",
        entries: drawn.map((entry, i) => ({ key: keyOf(entry), text: named[i] ?? "" })),
        anticipated: [
          { misconception: "farther_is_clearer", keys: [...drawn].reverse().map(keyOf) },
          { misconception: "water_does_not_count", keys: byDistance.map(keyOf) },
        ],
      },
      steps: [
        {
          operation: level === "beginner" ? "compare" : "judge",
          text: text.left({
            each: drawn.map(({ percent }, i) => ({ name: named[i] ?? "", percent: show.percent(percent) })),
          }),
        },
        { operation: "recall", text: text.last },
      ],
      sources: ["light_field", "path_attenuation", "jerlov_1976"],
      basis: "computed",
    };
  },
};

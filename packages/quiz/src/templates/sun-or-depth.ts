import { exposureLoss } from "@sunfathom/planner";
import type { Template } from "../item/template.js";
import { remembered } from "../light/remember.js";
import { byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
const SIDES = ["behind_camera", "beside", "in_frame"] as const;
type Side = (typeof SIDES)[number];
const DEPTHS_M = [3, 6, 10, 15];
/** One must have this much more light than the next, in stops: an exposure that shows. */
const CLEARLY_STOPS = 0.3;
const COUNT = { beginner: 3, working: 4, expert: 5 };

const subject_ev = remembered(
  (water: Water, depth_m: number, sun_side: Side): number =>
    exposureLoss({ ...byDay(water, SUN_DEG, depth_m), sun_side }).depths[0].exposure_value_ev100.likely,
);

/** The sun's side against depth: turning round costs as much light as many metres down. */
export const sunOrDepth: Template = {
  id: "sun_or_depth",
  topic: "exposure",
  interaction: "ordering",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const water = draw.pick(["IB", "II", "1C"] as const);
    const sides = level === "beginner" ? (["behind_camera", "in_frame"] as const) : SIDES;
    const all = DEPTHS_M.flatMap((depth_m) =>
      sides.map((side) => ({ depth_m, side, ev: subject_ev(water, depth_m, side) })),
    );
    const drawn = draw.sample(all, COUNT[level]).sort((a, b) => b.ev - a.ev);
    if (drawn.some(({ ev }, i) => i > 0 && (drawn[i - 1]?.ev ?? 0) - ev < CLEARLY_STOPS)) return undefined;
    const byDepth = [...drawn].sort((a, b) => a.depth_m - b.depth_m || b.ev - a.ev);
    const bySide = [...drawn].sort(
      (a, b) => SIDES.indexOf(a.side) - SIDES.indexOf(b.side) || a.depth_m - b.depth_m,
    );
    const keyOf = ({ depth_m, side }: (typeof drawn)[number]): string => `${side} ${depth_m}`;
    const right = drawn.map(keyOf).join();
    // Whoever looks at the depth alone must come to another order.
    if (byDepth.map(keyOf).join() === right) return undefined;
    const text = say.dive.sun_or_depth;
    const named = drawn.map(({ depth_m, side }) => text.entry[side]({ depth: show.m(depth_m) }));
    return {
      given: { water, entries: drawn.map(keyOf) },
      stem: text.stem({ water: say.common.water[water] }),
      answer: {
        interaction: "ordering",
        entries: drawn.map((entry, i) => ({ key: keyOf(entry), text: named[i] ?? "" })),
        anticipated: [
          { misconception: "depth_alone_counts", keys: byDepth.map(keyOf) },
          { misconception: "side_alone_counts", keys: bySide.map(keyOf) },
        ],
      },
      steps: [
        {
          operation: level === "beginner" ? "compare" : "judge",
          text: text.less({
            each: drawn.slice(1).map(({ ev }, i) => ({
              name: named[i + 1] ?? "",
              stops: show.stops((drawn[0]?.ev ?? ev) - ev),
            })),
          }),
        },
        { operation: "recall", text: text.last },
      ],
      sources: ["light_field", "jerlov_1976"],
      basis: "computed",
    };
  },
};

import { type FloorKind, floorReflectance, integrateProduct, meanSensor, multiply } from "@sunfathom/optics";
import type { Template } from "../item/template.js";
import { daylightAt } from "../light/daylight-left.js";
import { remembered } from "../light/remember.js";
import type { Water } from "../light/scenes.js";

const SUN_DEG = 50;
const TARGETS = ["white", "sand", "coral", "crustose_coralline_algae", "macroalgae", "seagrass"] as const;
type Target = (typeof TARGETS)[number];
/** One target must leave white this much farther off than the next, in stops. */
const CLEARLY_STOPS = 0.2;
const COUNT = { beginner: 3, working: 4 };

/** Between the channel that a target sends most of and the one it sends least of, against a white card there, in stops. */
const off_stops = remembered((target: Target, water: Water, depth_m: number): number => {
  if (target === "white") return 0;
  const light = daylightAt(water, SUN_DEG, depth_m);
  const sent = multiply(light, floorReflectance(target satisfies FloorKind));
  const { red, green, blue } = meanSensor();
  const steps = [red, green, blue].map((channel) =>
    Math.log2(integrateProduct(sent, channel) / integrateProduct(light, channel)),
  );
  return Math.max(...steps) - Math.min(...steps);
});

/** Card, sand or something else: what a white balance can be set on. */
export const balanceTarget: Template = {
  id: "balance_target",
  topic: "balance",
  interaction: "ordering",
  levels: ["beginner", "working"],
  advises: ["balance"],
  make({ draw, level, say, show }) {
    const water = draw.pick(["IB", "II", "1C"] as const);
    const depth_m = draw.pick([3, 5, 8]);
    const count = level === "beginner" ? COUNT.beginner : COUNT.working;
    const targets = draw
      .sample(TARGETS, count)
      .map((target) => ({ target, stops: off_stops(target, water, depth_m) }))
      .sort((a, b) => a.stops - b.stops);
    if (targets.some(({ stops }, i) => i > 0 && stops - (targets[i - 1]?.stops ?? 0) < CLEARLY_STOPS))
      return undefined;
    const text = say.more.balance_target;
    const keys = targets.map(({ target }) => target);
    return {
      given: { water, depth_m, targets: keys },
      stem: text.stem({ water: say.common.water[water], depth: show.m(depth_m) }),
      answer: {
        interaction: "ordering",
        entries: keys.map((key) => ({ key, text: text.entry[key] })),
        anticipated: [{ misconception: "colour_taken_for_grey", keys: [...keys].reverse() }],
      },
      steps: [
        {
          operation: level === "beginner" ? "compare" : "judge",
          text: text.off({
            each: targets.map(({ target, stops }) => ({
              name: text.entry[target],
              stops: show.stops(stops, 1),
            })),
          }),
        },
        { operation: "recall", text: text.last },
      ],
      sources: ["jerlov_1976", "mean_sensor", "bottom_reflectance"],
      basis: "computed",
    };
  },
};

import { itemAt } from "../../lists/non-empty.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { changeStops, endOf, mountOf, startOf } from "../legs.js";
import { step } from "./step.js";
import { tooDark } from "./too-dark.js";

/** Below this share of contrast, coming closer goes before everything else: a judgement. */
const HAZE_LIMITS_BELOW_PERCENT = 30;
/** Less than this needs no word. */
const DARKER_FROM_STOPS = 0.3;

/** What is done on the way down, leg by leg, and at the deep end. */
export function goingDown({ legs, filmed }: Decisions): DiveStep[] {
  const steps: DiveStep[] = [];
  legs.forEach((leg, i) => {
    const depth_m = leg.scene.min_depth_m;
    if (i > 0) {
      const code = leg.filtered ? "filter_in" : "filter_out";
      const stops = changeStops(itemAt(legs, i - 1), leg);
      steps.push(step({ phase: "going_down", depth_m }, code, { depth_m, stops, mount: mountOf(leg) }));
    }
    const again = leg.balance.balance_depths_descending_m.slice(1);
    const [first_m] = again;
    if (first_m !== undefined) {
      const tolerance = leg.balance.balance_tolerance_delta_e00;
      steps.push(
        step({ phase: "going_down", depth_m: first_m }, "balance_again", {
          depths_m: again,
          tolerance,
        }),
      );
    }
  });
  const first = startOf(legs);
  const last = endOf(legs);
  const deep = { phase: "going_down", depth_m: last.depth_m } as const;
  const isDeeper = last.depth_m > first.depth_m;
  const darker = first.exposure_value_ev100.likely - last.exposure_value_ev100.likely;
  if (isDeeper && last.verdict === "too_dark") steps.push(tooDark(deep, last));
  else if (isDeeper && darker > DARKER_FROM_STOPS) {
    steps.push(step(deep, "deep_exposure", { iso: last.iso, f_number: last.f_number, stops: darker }));
  }
  const percent = last.contrast_left_percent.likely;
  if (percent < HAZE_LIMITS_BELOW_PERCENT) {
    const phase = isDeeper ? "going_down" : "at_start";
    steps.push(
      step({ phase, depth_m: last.depth_m }, "come_close", {
        percent,
        distance_m: filmed.subject_distance_m,
      }),
    );
  }
  return steps;
}

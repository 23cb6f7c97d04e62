import { HAZE_LIMITS_BELOW_PERCENT } from "../../exposure-loss/haze-limits.js";
import { lastOf } from "../../lists/non-empty.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { endOfPlan, opensBy } from "../exposure-plan.js";
import { balanceAgain, filterChange, neutralChange, settingAfter, stationsOf } from "./change.js";
import { step } from "./step.js";
import { tooDark } from "./too-dark.js";

/** Less than a click of a third of a stop needs no word. */
export const DARKER_FROM_STOPS = 0.3;

/** What is done on the way down, leg by leg, and at the deep end. */
export function goingDown(d: Decisions): DiveStep[] {
  const { legs, filmed, exposure } = d;
  const phase = "going_down";
  const steps = legs.flatMap((leg, i) => [
    ...(i > 0 ? filterChange(leg, phase, stationsOf(d, leg)[0]?.setting) : []),
    ...[...balanceAgain(leg, phase, leg.down), ...neutralChange(d, leg, phase)].sort(
      (a, b) => (a.depth_m ?? 0) - (b.depth_m ?? 0),
    ),
  ]);
  const { exposure: last, setting } = endOfPlan(exposure);
  const { bottom_m } = lastOf(legs);
  const deep = { phase, depth_m: bottom_m } as const;
  const isDeeper = filmed.max_depth_m > filmed.min_depth_m;
  const before = settingAfter(d, steps);
  if (isDeeper && last.verdict === "too_dark") {
    if (exposure.stations[0].exposure.verdict !== "too_dark") steps.push(tooDark(deep, last));
  } else if (isDeeper && filmed.exposure_mode !== "auto") {
    const stops = opensBy(before, setting, filmed.shutter_s);
    if (stops > DARKER_FROM_STOPS) steps.push(step(deep, "deep_exposure", { ...setting, stops }));
  }
  const percent = last.contrast_left_percent.likely;
  if (percent < HAZE_LIMITS_BELOW_PERCENT) {
    const { subject_distance_m: distance_m } = filmed;
    const at = isDeeper ? deep : { ...deep, phase: "at_start" as const };
    steps.push(step({ ...at, basis: "judgement" }, "come_close", { percent, distance_m }));
  }
  return steps;
}

import { lastOf } from "../../lists/non-empty.js";
import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { DARKER_FROM_STOPS, endOfPlan, opensBy } from "../exposure-plan.js";
import {
  balanceAgain,
  filterChange,
  neutralChange,
  settingAfter,
  stationsOf,
  withExposure,
} from "./change.js";
import { tooDark } from "./too-dark.js";

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
    if (stops > DARKER_FROM_STOPS) withExposure(steps, deep, "deep_exposure", { ...setting, stops });
  }
  return steps;
}

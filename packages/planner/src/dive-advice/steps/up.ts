import type { DiveStep } from "../../result/dive-advice.js";
import type { Decisions } from "../decisions.js";
import { DARKER_FROM_STOPS, opensBy, startOfPlan } from "../exposure-plan.js";
import type { Leg } from "../legs.js";
import {
  balanceAgain,
  filterChange,
  neutralChange,
  settingAfter,
  stationsOf,
  withExposure,
} from "./change.js";
import { goingDown } from "./down.js";
import { step } from "./step.js";

/** The exposure follows the light from the deep end of a leg to its shallow end, before what is balanced there. */
function exposeLess(d: Decisions, leg: Leg, again: DiveStep[]): void {
  const stations = stationsOf(d, leg);
  const [top, bottom] = [stations[0], stations.at(-1)];
  if (!top || !bottom || d.filmed.exposure_mode === "auto" || top.exposure.verdict === "too_dark") return;
  const stops = -opensBy(bottom.setting, top.setting, d.filmed.shutter_s);
  if (stops <= DARKER_FROM_STOPS) return;
  const at = { phase: "coming_up", depth_m: leg.top_m } as const;
  withExposure(again, at, "shallow_exposure", { ...top.setting, stops });
}

/** What is done on the way up, leg by leg, until all is as it was at the start. */
export function comingUp(d: Decisions): DiveStep[] {
  const { legs, filmed, exposure } = d;
  const phase = "coming_up";
  const steps = [...legs].reverse().flatMap((leg, i) => {
    const change = i > 0 ? filterChange(leg, phase, stationsOf(d, leg).at(-1)?.setting) : [];
    const neutral = neutralChange(d, leg, phase);
    const again = balanceAgain(leg, phase, leg.up);
    // Where the filter is changed at the top of this leg, the exposure follows the light up to there before each card.
    if (leg !== legs[0] && neutral.length === 0 && again.length > 0) exposeLess(d, leg, again);
    if (neutral[0]?.depth_m === leg.bottom_m) return [...neutral, ...change, ...again];
    return [...change, ...[...again, ...neutral].sort((a, b) => (b.depth_m ?? 0) - (a.depth_m ?? 0))];
  });
  const { setting, exposure: first } = startOfPlan(exposure);
  const before = settingAfter(d, [...goingDown(d), ...steps]);
  const stops = -opensBy(before, setting, filmed.shutter_s);
  if (filmed.exposure_mode !== "auto" && stops > DARKER_FROM_STOPS && first.verdict !== "too_dark") {
    withExposure(steps, { phase, depth_m: legs[0].top_m }, "shallow_exposure", { ...setting, stops });
  }
  if (filmed.lamps.length > 0) {
    steps.push(step({ phase, basis: "common_practice" }, "lamps_off_before_air"));
  }
  return steps;
}

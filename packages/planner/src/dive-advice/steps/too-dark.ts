import { codedOf } from "../../codes/coded.js";
import type { WaysToPay } from "../../codes/ways-to-pay.js";
import type { DivePhase, DiveStep } from "../../result/dive-advice.js";
import type { ExposureAtDepth } from "../../result/exposure-loss.js";
import { step } from "./step.js";

/** What to do where the camera's most sensitive settings do not reach. */
export function tooDark(at: { phase: DivePhase; depth_m: number }, exposure: ExposureAtDepth): DiveStep {
  const { iso, f_number, shortfall_stops, ways_to_pay } = exposure;
  const enough = ways_to_pay.filter((way) => way.enough).slice(0, 2);
  const ways = enough.map((way) => codedOf<WaysToPay>(way));
  return step(at, "too_dark", { iso, f_number, shortfall_stops: shortfall_stops?.likely ?? 0, ways });
}

import { FIRST_NM, ramanDownwellingAt, STEP_NM } from "@sunfathom/optics";
import { valueAt } from "../lists/non-empty.js";
import { bisect } from "./bisect.js";
import type { Underwater } from "./underwater.js";

/** Deep red, where water takes most and its own red shows first. */
const DEEP_RED = (650 - FIRST_NM) / STEP_NM;
const DEEPEST_SEARCHED_M = 200;

/**
 * Depth from which red at 650 nm is made by inelastic scattering more than it comes down from the surface, to a centimetre: red
 * figures of an elastic model are not to be trusted below it. Undefined without daylight.
 */
export function redTrustedTo_m({ daylight, kd_per_m }: Underwater): number | undefined {
  if (!daylight) return undefined;
  const { downwelling } = daylight.below;
  const madeOverTransmitted = (depth_m: number): number =>
    ramanDownwellingAt(DEEP_RED, downwelling, kd_per_m, depth_m) /
    (valueAt(downwelling, DEEP_RED) * Math.exp(-valueAt(kd_per_m, DEEP_RED) * depth_m));
  return bisect((depth_m) => madeOverTransmitted(depth_m) < 1, 0, DEEPEST_SEARCHED_M, 0.01);
}

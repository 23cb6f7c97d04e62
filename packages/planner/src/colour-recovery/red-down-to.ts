import type { Spectrum } from "@sunfathom/optics";
import { cameraState } from "../camera/camera-state.js";
import { takeShot } from "../camera/shot.js";
import { bisect } from "../light/bisect.js";
import type { Conditions } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Nuisance } from "../uncertainty/nuisance.js";
import { redLightIn } from "./red-light.js";

/** Bounds of the search, not advice. */
const FROM_M = 0.1;
const TO_M = 60;

/** A depth by its logarithm, held to the bounds of the search: a spread must not lead beyond what was looked at. */
export const depthWithin_m = (log2Depth: number): number => Math.min(TO_M, Math.max(FROM_M, 2 ** log2Depth));

/**
 * Depth at which red light above 600 nm on an 18 % grey falls to a signal over noise, to a percent; held to the bounds of the search,
 * which no natural water reaches below.
 */
export function redDownTo_m(
  conditions: Conditions,
  nuisance: Nuisance,
  filter: Spectrum,
  signalToNoise: number,
): number {
  const world = underwater(conditions, nuisance);
  const camera = cameraState(conditions.scene, nuisance);
  const enough = (log2Depth: number): boolean => {
    const shot = takeShot(stageAt(world, 2 ** log2Depth), filter, camera);
    return redLightIn(shot, camera.profile.sensor).signalToNoise >= signalToNoise;
  };
  return 2 ** bisect(enough, Math.log2(FROM_M), Math.log2(TO_M), 0.01);
}

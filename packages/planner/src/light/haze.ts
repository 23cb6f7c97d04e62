/** Haze between subject and camera, and what it leaves to be seen of the subject. */
import {
  illuminance_lx,
  lossStops,
  multiply,
  pathTransmittance,
  type Spectrum,
  veilingLight,
} from "@sunfathom/optics";
import { openWaterAt } from "./daylight-at-depth.js";
import { towardsCamera, type Underwater } from "./underwater.js";

/**
 * Daylight that the water before the subject scatters into the camera, as the light on a white card that looks as bright,
 * W m^-2 nm^-1, before port and filter. Only with daylight.
 */
export const hazeAt = (world: Underwater, depth_m: number): Spectrum =>
  veilingLight(openWaterAt(world, depth_m), towardsCamera(world));

/**
 * Contrast against open water that is lost on the way to the camera, in stops. It falls with the beam: what is scattered, however
 * little, no longer draws the edge (Duntley 1963). Luminance mean.
 * @param subject light on the subject
 */
export function contrastLoss(world: Underwater, subject: Spectrum): number {
  const beam = pathTransmittance(world.water.beam_attenuation_per_m, world.scene.subject_distance_m);
  return lossStops(illuminance_lx(subject), illuminance_lx(multiply(subject, beam)));
}

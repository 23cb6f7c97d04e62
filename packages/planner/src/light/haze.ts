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

/** What lies between the camera and its subject, before port and filter. Dark without daylight. */
export interface View {
  /** Open water behind the subject, as the light on a white card that looks as bright, W m^-2 nm^-1. */
  openWater: Spectrum;
  /** What the water before the subject lets through, 0 to 1. */
  path: Spectrum;
  /** Daylight that the water before the subject scatters into the camera, in the unit of open water. */
  haze: Spectrum;
}

export function viewAt(world: Underwater, depth_m: number): View {
  const openWater = openWaterAt(world, depth_m);
  const path = towardsCamera(world);
  return { openWater, path, haze: veilingLight(openWater, path) };
}

/**
 * Contrast against open water that is lost on the way to the camera, in stops. It falls with the beam: what is scattered, however
 * little, no longer draws the edge (Duntley 1963). Luminance mean.
 * @param subject light on the subject
 */
export function contrastLoss(world: Underwater, subject: Spectrum): number {
  const beam = pathTransmittance(world.water.beam_attenuation_per_m, world.scene.subject_distance_m);
  return lossStops(illuminance_lx(subject), illuminance_lx(multiply(subject, beam)));
}

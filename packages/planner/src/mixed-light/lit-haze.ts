import {
  add,
  backscattering,
  illuminance_lx,
  lampHazeRadiance,
  multiply,
  PURE_WATER_SCATTERING_PER_M,
  type Spectrum,
  scale,
} from "@sunfathom/optics";
import { beamInWater_deg, lampFilter, lampIntensity_cd, lampSpectrum } from "../light/lamps.js";
import { lampLightAt, towardsCamera, type Underwater } from "../light/underwater.js";

const GREY_REFLECTANCE = 0.18;
/** How far a lamp is taken to stand from the line of sight: on a short arm. Assumed, and carried as uncertainty. */
const LAMP_OFFSET_M = 0.35;

/** Luminance of the haze that the lamps light over that of an 18 % grey that they light, both at the camera. */
export function hazeOverGrey(world: Underwater): number {
  const { water, scene, path_per_m, nuisance } = world;
  const backward = backscattering(water.scattering_per_m, PURE_WATER_SCATTERING_PER_M);
  let haze: Spectrum = new Float64Array(backward.length);
  for (const lamp of scene.lamps) {
    const cd = lampIntensity_cd(lamp) * nuisance.lampIntensityScale;
    const intensity: Spectrum = scale(multiply(lampSpectrum(lamp), lampFilter(lamp)), cd);
    const part = lampHazeRadiance(intensity, backward, path_per_m, {
      subjectDistance_m: scene.subject_distance_m,
      lampDistance_m: lamp.distance_m,
      offset_m: LAMP_OFFSET_M * nuisance.lampOffsetScale,
      beamAngle_deg: beamInWater_deg(lamp),
    });
    haze = add(haze, part);
  }
  const grey = scale(multiply(lampLightAt(world), towardsCamera(world)), GREY_REFLECTANCE / Math.PI);
  return illuminance_lx(haze) / illuminance_lx(grey);
}

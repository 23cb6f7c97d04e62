/**
 * Haze that lamps light up between subject and camera: single scattering back along the line of sight.
 *
 * The lamp stands beside the line of sight by `offset_m` and points at the subject, `lampDistance_m` away; a point of the line at
 * range x from the camera receives the intensity in its direction (see `beam.ts`) over squared distance, and scatters
 * bb / (2 pi) of it per steradian towards the camera (the backward half taken as even; backscattered share of particles 0.0183,
 * Petzold 1972 as used in public radiative-transfer code; of pure water 0.5). Both ways attenuate. Midpoint rule, 60 steps. An
 * estimate: what counts most, how far the lamp stands off and what floats near the port, is not known.
 */
import { beamExponent, beamShare } from "../lamp/beam.js";
import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";

export const PARTICLE_BACKSCATTER_SHARE = 0.0183;
const STEPS = 60;

export interface LampHazeGeometry {
  subjectDistance_m: number;
  lampDistance_m: number;
  offset_m: number;
  /** Full beam angle in water. */
  beamAngle_deg: number;
}

/** Backscattering coefficient of particles and water, 1/m. */
export function backscattering(scattering_per_m: Spectrum, pureScattering_per_m: Spectrum): Spectrum {
  return scattering_per_m.map(
    (b, i) => PARTICLE_BACKSCATTER_SHARE * (b - pureScattering_per_m[i]) + 0.5 * pureScattering_per_m[i],
  );
}

/**
 * Radiance of the lit haze, W m^-2 sr^-1 nm^-1.
 * @param intensity spectral radiant intensity of the lamps in the middle of their beams, W sr^-1 nm^-1.
 */
export function lampHazeRadiance(
  intensity: Spectrum,
  backscattering_per_m: Spectrum,
  attenuation_per_m: Spectrum,
  { subjectDistance_m, lampDistance_m, offset_m, beamAngle_deg }: LampHazeGeometry,
): Spectrum {
  const offset = Math.min(offset_m, 0.9 * lampDistance_m);
  const behind = Math.sqrt(lampDistance_m ** 2 - offset ** 2);
  const lamp = subjectDistance_m - behind;
  const exponent = beamExponent(beamAngle_deg);
  const out = new Float64Array(GRID_SIZE);
  const step = subjectDistance_m / STEPS;
  for (let n = 0; n < STEPS; n++) {
    const x = (n + 0.5) * step;
    const along = x - lamp;
    const distance = Math.hypot(along, offset);
    // Cosine of the angle between the beam's axis, lamp to subject, and the direction to this point.
    const cos = (along * behind + offset * offset) / (distance * lampDistance_m);
    const geometry = (step * beamShare(cos, exponent)) / (2 * Math.PI * distance * distance);
    for (let i = 0; i < GRID_SIZE; i++) {
      out[i] +=
        intensity[i] * backscattering_per_m[i] * geometry * Math.exp(-attenuation_per_m[i] * (distance + x));
    }
  }
  return out;
}

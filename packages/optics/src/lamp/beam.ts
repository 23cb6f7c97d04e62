/**
 * How a lamp spreads its light. A beam angle is the full angle between the directions of half the intensity in the middle
 * (CIE e-ILV 17-27-077). Between and beyond them intensity falls as a power of the cosine, I0 cos^m, the generalised Lambertian
 * pattern of LEDs (Moreno & Sun 2008, Modeling the radiation pattern of LEDs, Opt. Express 16, 1808; from memory), scaled to the
 * lamp's flux: I0 = flux (m + 1) / (2 pi). Domain: full angles above 0 up to 180 degrees; 120 degrees is Lambert's own m = 1.
 */
import { WATER_INDEX } from "../surface/snell-fresnel.js";

const RADIAN = Math.PI / 180;
/** Rings and directions of the mean over a subject: within 0.3 % of fine steps. */
const RINGS = 4;
const DIRECTIONS = 6;

/** Full beam angle in water of a lamp whose angle was measured in air, behind a flat port: sin(w/2) = sin(a/2)/n. Exact (Snell). */
export function beamAngleInWater_deg(beamAngleInAir_deg: number): number {
  return (2 * Math.asin(Math.sin((beamAngleInAir_deg / 2) * RADIAN) / WATER_INDEX)) / RADIAN;
}

/** m of I0 cos^m: half of I0 at half the beam angle; 0, an even hemisphere, for 180 degrees. */
export const beamExponent = (beamAngle_deg: number): number =>
  beamAngle_deg >= 180 ? 0 : Math.LN2 / -Math.log(Math.cos((beamAngle_deg / 2) * RADIAN));

/** Luminous intensity in the middle of the beam, cd. */
export const peakIntensity_cd = (flux_lm: number, beamAngle_deg: number): number =>
  (flux_lm * (beamExponent(beamAngle_deg) + 1)) / (2 * Math.PI);

/** Share of the intensity in the middle of the beam in a direction off it, by the cosine of that angle. */
export const beamShare = (cosOff: number, exponent: number): number => (cosOff <= 0 ? 0 : cosOff ** exponent);

/**
 * Mean intensity over a subject, as a share of that in the middle of the beam.
 * @param aimOff_deg between the middle of the beam and the middle of the subject
 * @param subjectHalfAngle_deg of the subject as the lamp sees it, below 90. How distance and slant change across it is left out:
 * subjects are seldom flat.
 */
export function beamShareOnSubject(
  beamAngle_deg: number,
  aimOff_deg: number,
  subjectHalfAngle_deg: number,
): number {
  const exponent = beamExponent(beamAngle_deg);
  const [aimCos, aimSin] = [Math.cos(aimOff_deg * RADIAN), Math.sin(aimOff_deg * RADIAN)];
  const cap = 1 - Math.cos(subjectHalfAngle_deg * RADIAN);
  let sum = 0;
  for (let ring = 0; ring < RINGS; ring++) {
    // Rings of equal solid angle.
    const cos = 1 - (cap * (ring + 0.5)) / RINGS;
    const sin = Math.sqrt(1 - cos * cos);
    for (let k = 0; k < DIRECTIONS; k++) {
      const around = Math.cos((Math.PI * (k + 0.5)) / DIRECTIONS);
      sum += beamShare(cos * aimCos + sin * aimSin * around, exponent);
    }
  }
  return sum / (RINGS * DIRECTIONS);
}

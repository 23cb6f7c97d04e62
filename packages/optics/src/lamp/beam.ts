/**
 * How a lamp spreads its light. A beam angle is the full angle between the directions of half the intensity in the middle
 * (CIE e-ILV 17-27-077). Between and beyond them intensity falls as a power of the cosine, I0 cos^m, the generalised Lambertian
 * pattern of LEDs (Moreno & Sun 2008, Modeling the radiation pattern of LEDs, Opt. Express 16, 1808; from memory), scaled to the
 * lamp's flux: I0 = flux (m + 1) / (2 pi). Domain: full angles above 0 up to 180 degrees; 120 degrees is Lambert's own m = 1.
 */
import { WATER_INDEX } from "../surface/snell-fresnel.js";

const RADIAN = Math.PI / 180;
/** Nodes from -1 to 1 and weights of Gauss and Legendre's rule for 8 points (Abramowitz & Stegun 1964, table 25.4), one half of them. */
const NODES = [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363];
const WEIGHTS = [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];

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

/** A subject smaller than this, radians, is a point. */
const POINT = 1e-4;

/**
 * Mean intensity over a subject, as a share of that in the middle of the beam: the flux that lands on it over its solid angle. Taken
 * ring by ring around the middle of the beam, so that a narrow beam somewhere on a wide subject is not missed. Exact where all rings
 * lie on the subject or none of them does; else within 0.01 % of fine steps.
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
  const [aim, half] = [aimOff_deg * RADIAN, subjectHalfAngle_deg * RADIAN];
  if (half < POINT) return beamShare(Math.cos(aim), exponent);
  const power = exponent + 1;
  const beyond = (off: number): number => beamShare(Math.cos(off), power);
  const onSubject = 1 - beyond(Math.max(0, half - aim));
  const partly = partOfRings({ aim, half, power }, beyond(Math.abs(half - aim)), beyond(half + aim));
  return (onSubject + partly) / (power * (1 - Math.cos(half)));
}

/** Flux on the subject of rings that lie on it in part, of all the beam's: between two shares of the flux that lie farther out. */
function partOfRings(
  { aim, half, power }: { aim: number; half: number; power: number },
  from: number,
  to: number,
): number {
  if (from <= to) return 0;
  const at = (place: number): number => {
    // Closer together towards both ends, where rings begin and cease to touch the subject: there the part of a ring changes as a root.
    const farther = from + (to - from) * (0.5 - 0.5 * Math.cos(Math.PI * place));
    const below1 = -Math.expm1(Math.log(farther) / power);
    const [cos, sin] = [1 - below1, Math.sqrt(below1 * (2 - below1))];
    const around = (Math.cos(half) - Math.cos(aim) * cos) / (Math.sin(aim) * sin);
    return Math.acos(Math.min(1, Math.max(-1, around))) * Math.sin(Math.PI * place);
  };
  let sum = 0;
  for (const [n, node] of NODES.entries()) sum += WEIGHTS[n] * (at(0.5 - node / 2) + at(0.5 + node / 2));
  return ((from - to) * sum) / 4;
}

/**
 * Colour difference CIEDE2000 between two CIELAB colours, kL = kC = kH = 1.
 * Source: ISO/CIE 11664-6; Sharma, Wu & Dalal 2005, Color Research and Application 30, 21, whose 34 pairs the test replays.
 *
 * The published text goes by hue angles. Here cosine and sine of the mean hue come from the bisector of both, and those of its multiples
 * from them: the same to rounding, in half the time, and it is asked very often.
 */
import { seventhPower } from "../fast/powers.js";
import type { Lab } from "./lab.js";

const DEG = Math.PI / 180;
const POW25_7 = 25 ** 7;
const [COS30, SIN30, COS6, SIN6, COS63, SIN63] = [30, 6, 63].flatMap((angle) => [
  Math.cos(angle * DEG),
  Math.sin(angle * DEG),
]);

/** Not `Math.hypot`, which takes several times as long over numbers that never come near its range. */
const chroma = (a: number, b: number): number => Math.sqrt(a * a + b * b);

/** Share of chroma above which blue hues are turned: 0 for greys, 1 far from them. */
const far = (c: number): number => {
  const c7 = seventhPower(c);
  return Math.sqrt(c7 / (c7 + POW25_7));
};

export const deltaE00 = ([L1, a1, b1]: Lab, [L2, a2, b2]: Lab): number => deltaE00Of(L1, a1, b1, L2, a2, b2);

/** The same of two colours by their numbers. */
export function deltaE00Of(L1: number, a1: number, b1: number, L2: number, a2: number, b2: number): number {
  const stretch = 1.5 - 0.5 * far((chroma(a1, b1) + chroma(a2, b2)) / 2);
  const a1p = stretch * a1;
  const a2p = stretch * a2;
  const c1 = chroma(a1p, b1);
  const c2 = chroma(a2p, b2);
  const both = c1 * c2;
  const meanL50 = (L1 + L2) / 2 - 50;
  const meanC = (c1 + c2) / 2;
  const x = (L2 - L1) / (1 + (0.015 * meanL50 * meanL50) / Math.sqrt(20 + meanL50 * meanL50));
  const y = (c2 - c1) / (1 + 0.045 * meanC);
  // A grey has no hue: none differs from it.
  if (both === 0) return Math.sqrt(x * x + y * y);

  const along = a1p * a2p + b1 * b2;
  const across = a1p * b2 - a2p * b1;
  // 2 sqrt(both) sin of half the angle between the hues, by what does not cancel.
  const dH =
    along >= 0
      ? across * Math.sqrt(2 / (both + along))
      : Math.sqrt(2 * (both - along)) * (across < 0 ? -1 : 1);
  let cos = a1p * c2 + a2p * c1;
  let sin = b1 * c2 + b2 * c1;
  const length = chroma(cos, sin);
  if (length > 1e-9 * both) {
    cos /= length;
    sin /= length;
  } else {
    // Opposite hues: the mean of their angles from 0 to 360 degrees.
    const angle = (hue(a1p, b1) + hue(a2p, b2)) / 2;
    cos = Math.cos(angle);
    sin = Math.sin(angle);
  }
  const cos2 = cos * cos - sin * sin;
  const sin2 = 2 * sin * cos;
  const cos3 = cos * cos2 - sin * sin2;
  const sin3 = sin * cos2 + cos * sin2;
  const t =
    1 -
    0.17 * (cos * COS30 + sin * SIN30) +
    0.24 * cos2 +
    0.32 * (cos3 * COS6 - sin3 * SIN6) -
    0.2 * ((cos2 * cos2 - sin2 * sin2) * COS63 + 2 * sin2 * cos2 * SIN63);
  const z = dH / (1 + 0.015 * meanC * t);
  return Math.sqrt(Math.max(0, x * x + y * y + z * z - turn(cos, sin, meanC) * y * z));
}

/** Angle of a hue, 0 up to 2 pi. */
const hue = (a: number, b: number): number => {
  const angle = Math.atan2(b, a);
  return angle < 0 ? angle + 2 * Math.PI : angle;
};

/** Hues around which blues are turned, in degrees, and how far on either side: beyond, there are 1e-11 or the end of the circle. */
const BLUE = { at: 275, below: 125, above: 85 };
const COS_BLUE = Math.cos(BLUE.at * DEG);
const SIN_BLUE = Math.sin(BLUE.at * DEG);
const COS_BELOW = Math.cos(BLUE.below * DEG);
const COS_ABOVE = Math.cos(BLUE.above * DEG);
/** The turn by the tangent of half the angle from there, as a table. Its first number stands a step before 0. */
const PER_UNIT = 2048;
const TURNS = Float64Array.from({ length: 2 * PER_UNIT + 3 }, (_, n) => {
  const apart = (2 * Math.atan((n - 1) / PER_UNIT)) / DEG / 25;
  return Math.sin(60 * DEG * Math.exp(-apart * apart));
});

/** How much blue hues are turned. By cubic interpolation, to 1e-9: arc tangent, exponential and sine take half of all the time. */
function turn(cos: number, sin: number, meanC: number): number {
  const along = cos * COS_BLUE + sin * SIN_BLUE;
  const across = sin * COS_BLUE - cos * SIN_BLUE;
  if (along < (across < 0 ? COS_BELOW : COS_ABOVE)) return 0;
  const place = (Math.abs(across) / (1 + along)) * PER_UNIT;
  const n = place | 0;
  const x = place - n;
  const [p, q, r, s] = [TURNS[n], TURNS[n + 1], TURNS[n + 2], TURNS[n + 3]];
  const value = q + x * (r - p / 3 - q / 2 - s / 6 + x * ((p + r) / 2 - q + x * ((s - p) / 6 + (q - r) / 2)));
  return 2 * far(meanC) * value;
}

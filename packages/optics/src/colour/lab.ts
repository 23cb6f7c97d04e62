/** CIELAB 1976 from tristimulus values. Source: CIE 15; ISO/CIE 11664-4. */
import type { Xyz } from "./observer.js";

export type Lab = readonly [L: number, a: number, b: number];

const EPSILON = 216 / 24389;
const KAPPA = 24389 / 27;
const f = (t: number): number => (t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116);

/** @param white tristimulus values of the adapted white, same unit as `xyz`. */
export function labOf(xyz: Xyz, white: Xyz): Lab {
  const fx = f(xyz[0] / white[0]);
  const fy = f(xyz[1] / white[1]);
  const fz = f(xyz[2] / white[2]);
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

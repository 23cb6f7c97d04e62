/**
 * Correlated colour temperature and distance from the Planckian locus, by exact search in CIE 1960 uv.
 *
 * Definition: CIE 15 (nearest Planckian in uv); sign of Duv as Ohno 2014, Practical use and calculation of CCT and Duv,
 * LEUKOS 10, 47: positive above the locus. CCT is withheld for |Duv| > 0.05, where CIE gives it no meaning.
 */
import { planckian } from "./illuminants.js";
import { chromaticity, xyzOf } from "./observer.js";

export const CCT_MEANINGFUL_DUV = 0.05;
const MIN_MIRED = 10;
const MAX_MIRED = 1000;

export interface CctDuv {
  /** Absent where |duv| exceeds 0.05 or the nearest Planckian lies beyond 1000 to 100 000 K. */
  cct_K?: number;
  /** Signed distance from the locus in CIE 1960 uv. */
  duv: number;
}

/** CIE 1960 uv from xy. */
export function uv1960(x: number, y: number): { u: number; v: number } {
  const d = -2 * x + 12 * y + 3;
  return { u: (4 * x) / d, v: (6 * y) / d };
}

/** xy from CIE 1960 uv. */
export function xyFromUv1960(u: number, v: number): { x: number; y: number } {
  const d = 2 * u - 8 * v + 4;
  return { x: (3 * u) / d, y: (2 * v) / d };
}

/** Point of the Planckian locus, CIE 1960 uv, on the model's grid. */
export function locusUv(mired: number): { u: number; v: number } {
  const { x, y } = chromaticity(xyzOf(planckian(1e6 / mired)));
  return uv1960(x, y);
}

const STEP = 10;
const LOCUS = Array.from({ length: (MAX_MIRED - MIN_MIRED) / STEP + 1 }, (_, i) =>
  locusUv(MIN_MIRED + i * STEP),
);

/** Direction of rising mired along the locus and the normal that points above it. */
export function locusNormal(mired: number): { u: number; v: number } {
  const a = locusUv(mired - 0.5);
  const b = locusUv(mired + 0.5);
  const length = Math.hypot(b.u - a.u, b.v - a.v);
  return { u: -(b.v - a.v) / length, v: (b.u - a.u) / length };
}

/** Nearest point of the locus by golden-section search around the nearest tabulated point. */
function nearestMired(u: number, v: number): number {
  let best = 0;
  let least = Infinity;
  LOCUS.forEach((p, i) => {
    const d = Math.hypot(p.u - u, p.v - v);
    if (d < least) {
      least = d;
      best = i;
    }
  });
  const distance = (mired: number) => {
    const p = locusUv(mired);
    return Math.hypot(p.u - u, p.v - v);
  };
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = Math.max(MIN_MIRED, MIN_MIRED + (best - 1) * STEP);
  let high = Math.min(MAX_MIRED, MIN_MIRED + (best + 1) * STEP);
  let m1 = high - golden * (high - low);
  let m2 = low + golden * (high - low);
  let d1 = distance(m1);
  let d2 = distance(m2);
  for (let i = 0; i < 34; i++) {
    if (d1 < d2) {
      high = m2;
      m2 = m1;
      d2 = d1;
      m1 = high - golden * (high - low);
      d1 = distance(m1);
    } else {
      low = m1;
      m1 = m2;
      d1 = d2;
      m2 = low + golden * (high - low);
      d2 = distance(m2);
    }
  }
  return (low + high) / 2;
}

export function cctDuv(x: number, y: number): CctDuv {
  const { u, v } = uv1960(x, y);
  const mired = nearestMired(u, v);
  const p = locusUv(mired);
  const n = locusNormal(Math.min(MAX_MIRED - 1, Math.max(MIN_MIRED + 1, mired)));
  const distance = Math.hypot(u - p.u, v - p.v);
  const duv = (u - p.u) * n.u + (v - p.v) * n.v < 0 ? -distance : distance;
  const atEnd = mired < MIN_MIRED + 0.01 || mired > MAX_MIRED - 0.01;
  return Math.abs(duv) > CCT_MEANINGFUL_DUV || atEnd ? { duv } : { cct_K: 1e6 / mired, duv };
}

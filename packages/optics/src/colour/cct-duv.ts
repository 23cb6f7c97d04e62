/**
 * Correlated colour temperature and distance from the Planckian locus, by search for the nearest point in CIE 1960 uv. The locus
 * is integrated on the model's grid, which moves it by up to 0.2 mired against one of 1 nm.
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

/** Direction of rising mired along the locus and the normal that points above it. */
export function locusNormal(mired: number): { u: number; v: number } {
  const a = locusUv(mired - 0.5);
  const b = locusUv(mired + 0.5);
  const length = Math.hypot(b.u - a.u, b.v - a.v);
  return { u: -(b.v - a.v) / length, v: (b.u - a.u) / length };
}

/** Nodes of the locus, close enough that a parabola through three of them is exact to 1e-4 mired. */
const NODE_STEP = 2;
const NODES = Array.from({ length: (MAX_MIRED - MIN_MIRED) / NODE_STEP + 1 }, (_, i) =>
  locusUv(MIN_MIRED + i * NODE_STEP),
);

/** The locus bends slowly: the nearest of every so many nodes lies within so many of the nearest of all. */
const STRIDE = 15;

/** Index of the node that lies nearest. */
function nearestNode(u: number, v: number): number {
  const coarse = nearestOf(u, v, 0, NODES.length - 1, STRIDE);
  return nearestOf(u, v, Math.max(0, coarse - STRIDE), Math.min(NODES.length - 1, coarse + STRIDE), 1);
}

/** The nearest of the nodes from `first` to `last`, `step` by `step`. */
function nearestOf(u: number, v: number, first: number, last: number, step: number): number {
  let best = first;
  let least = Number.POSITIVE_INFINITY;
  for (let i = first; i <= last; i += step) {
    const du = NODES[i].u - u;
    const dv = NODES[i].v - v;
    const square = du * du + dv * dv;
    if (square < least) {
      least = square;
      best = i;
    }
  }
  return best;
}

/** Nearest point of the locus: on the parabola through the nearest node and its neighbours, by Newton's method. */
function nearestOnLocus(u: number, v: number): { mired: number; u: number; v: number } {
  const i = Math.min(NODES.length - 2, Math.max(1, nearestNode(u, v)));
  const [a, b, c] = [NODES[i - 1], NODES[i], NODES[i + 1]];
  const slopeU = (c.u - a.u) / 2;
  const slopeV = (c.v - a.v) / 2;
  const bendU = c.u - 2 * b.u + a.u;
  const bendV = c.v - 2 * b.v + a.v;
  const at = (t: number) => ({
    u: b.u + t * slopeU + (t * t * bendU) / 2,
    v: b.v + t * slopeV + (t * t * bendV) / 2,
  });
  let t = 0;
  for (let step = 0; step < 6; step++) {
    const p = at(t);
    const pu = slopeU + t * bendU;
    const pv = slopeV + t * bendV;
    const gradient = (p.u - u) * pu + (p.v - v) * pv;
    const curvature = pu * pu + pv * pv + (p.u - u) * bendU + (p.v - v) * bendV;
    t = Math.min(1, Math.max(-1, curvature > 0 ? t - gradient / curvature : t - Math.sign(gradient)));
  }
  return { mired: MIN_MIRED + (i + t) * NODE_STEP, ...at(t) };
}

export function cctDuv(x: number, y: number): CctDuv {
  const { u, v } = uv1960(x, y);
  const { mired, ...p } = nearestOnLocus(u, v);
  const node = Math.min(NODES.length - 2, Math.max(1, Math.round((mired - MIN_MIRED) / NODE_STEP)));
  // Rising mired runs towards red; the normal to its left points above the locus.
  const du = NODES[node + 1].u - NODES[node - 1].u;
  const dv = NODES[node + 1].v - NODES[node - 1].v;
  const distance = Math.hypot(u - p.u, v - p.v);
  const duv = (u - p.u) * -dv + (v - p.v) * du < 0 ? -distance : distance;
  const atEnd = mired < MIN_MIRED + 0.01 || mired > MAX_MIRED - 0.01;
  return Math.abs(duv) > CCT_MEANINGFUL_DUV || atEnd ? { duv } : { cct_K: 1e6 / mired, duv };
}

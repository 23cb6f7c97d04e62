/**
 * By angles, as published, before it was made fast: see README.md.
 * Colour difference CIEDE2000 between two CIELAB colours, kL = kC = kH = 1.
 * Source: ISO/CIE 11664-6; Sharma, Wu & Dalal 2005, Color Research and Application 30, 21, whose 34 pairs the test replays.
 */

import type { Lab } from "@sunfathom/optics";
import { seventhPower } from "../../../packages/optics/src/fast/powers.js";

const DEG = Math.PI / 180;
const POW25_7 = 25 ** 7;

/** Not `Math.hypot`, which takes several times as long over numbers that never come near its range. */
const chroma = (a: number, b: number): number => Math.sqrt(a * a + b * b);

const hue = (a: number, b: number): number => {
  if (a === 0 && b === 0) return 0;
  const h = Math.atan2(b, a) / DEG;
  return h < 0 ? h + 360 : h;
};

export function deltaE00(first: Lab, second: Lab): number {
  const [L1, a1, b1] = first;
  const [L2, a2, b2] = second;
  const meanC7 = seventhPower((chroma(a1, b1) + chroma(a2, b2)) / 2);
  const g = 0.5 * (1 - Math.sqrt(meanC7 / (meanC7 + POW25_7)));
  const a1p = (1 + g) * a1;
  const a2p = (1 + g) * a2;
  const c1 = chroma(a1p, b1);
  const c2 = chroma(a2p, b2);
  const h1 = hue(a1p, b1);
  const h2 = hue(a2p, b2);
  const grey = c1 * c2 === 0;

  let dh = 0;
  let meanH = h1 + h2;
  if (!grey) {
    dh = h2 - h1;
    if (dh > 180) dh -= 360;
    else if (dh < -180) dh += 360;
    if (Math.abs(h1 - h2) <= 180) meanH = (h1 + h2) / 2;
    else meanH = h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
  }
  const dL = L2 - L1;
  const dC = c2 - c1;
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((dh / 2) * DEG);
  const meanL = (L1 + L2) / 2;
  const meanC = (c1 + c2) / 2;
  const t =
    1 -
    0.17 * Math.cos((meanH - 30) * DEG) +
    0.24 * Math.cos(2 * meanH * DEG) +
    0.32 * Math.cos((3 * meanH + 6) * DEG) -
    0.2 * Math.cos((4 * meanH - 63) * DEG);
  const sL = 1 + (0.015 * (meanL - 50) ** 2) / Math.sqrt(20 + (meanL - 50) ** 2);
  const sC = 1 + 0.045 * meanC;
  const sH = 1 + 0.015 * meanC * t;
  const c7 = seventhPower(meanC);
  const rotation =
    -2 * Math.sqrt(c7 / (c7 + POW25_7)) * Math.sin(60 * Math.exp(-(((meanH - 275) / 25) ** 2)) * DEG);
  const x = dL / sL;
  const y = dC / sC;
  const z = dH / sH;
  return Math.sqrt(Math.max(0, x * x + y * y + z * z + rotation * y * z));
}

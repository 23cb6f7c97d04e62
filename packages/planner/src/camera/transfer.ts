/**
 * How a recording spreads its code values over light: the slope of its transfer curve. Light is counted with 1 for a white card that
 * is exposed to the top of the recording.
 *
 * Sources: Recommendation ITU-R BT.709, item 1.2; ITU-R BT.2100-2, table 5 (HLG), with a white at 75 % of its codes as Report
 * ITU-R BT.2408 places it: what HLG keeps for highlights above white lies outside of these pictures.
 */
import { power } from "@sunfathom/optics";
import { itemAt } from "../lists/non-empty.js";
import type { RecordingCurve, RecordingPoint } from "../scene/scene.js";

export type Transfer = RecordingCurve | readonly RecordingPoint[];

/** A logarithmic curve is taken to spread its codes evenly over 13 stops, evenly in light below them: from memory of cameras. */
export const LOG_STOPS = 13;
export const LEAST_LOG = 2 ** -LOG_STOPS;

export const HLG_A = 0.17883277;
export const HLG_B = 1 - 4 * HLG_A;
export const HLG_C = 0.5 - HLG_A * Math.log(4 * HLG_A);
/** Scene light, of the highest that HLG encodes, at 75 % of the codes. */
export const HLG_WHITE = (Math.exp((0.75 - HLG_C) / HLG_A) + HLG_B) / 12;
/** Below this light HLG's square root, infinitely steep at zero, is held: less than half a code of 8 bits. */
const LEAST_HLG = 2 ** -20;

function slopeOfHlg(linear: number): number {
  const light = Math.max(linear * HLG_WHITE, LEAST_HLG);
  return HLG_WHITE * (light <= 1 / 12 ? Math.sqrt(0.75 / light) : (12 * HLG_A) / (12 * light - HLG_B));
}

function slopeBetween(points: readonly RecordingPoint[], linear: number): number {
  const after = points.findIndex(({ light_share }) => light_share > linear);
  const upper = after < 0 ? points.length - 1 : Math.max(1, after);
  const [low, high] = [itemAt(points, upper - 1), itemAt(points, upper)];
  return (high.code_share - low.code_share) / (high.light_share - low.light_share);
}

/** Share of the code values per linear unit, at a linear value. */
export function transferSlope(curve: Transfer, linear: number): number {
  if (typeof curve !== "string") return slopeBetween(curve, linear);
  if (curve === "linear") return 1;
  if (curve === "log") return 1 / (LOG_STOPS * Math.LN2 * Math.max(linear, LEAST_LOG));
  if (curve === "hlg") return slopeOfHlg(linear);
  return linear < 0.018 ? 4.5 : 1.099 * 0.45 * power(linear, -0.55);
}

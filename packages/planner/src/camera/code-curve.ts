/**
 * Where a light stands among the code values of a recording, and the light that a code stands for. Light is counted with 1 for a white
 * card that is exposed to the top of the recording; codes as a share of all.
 *
 * Sources as of `transferSlope`, which is their slope. A logarithmic curve is told by its slope alone, with white at the top.
 */
import { itemAt } from "../lists/non-empty.js";
import type { RecordingPoint } from "../scene/scene.js";
import { HLG_A, HLG_B, HLG_C, HLG_WHITE, LEAST_LOG, LOG_STOPS, type Transfer } from "./transfer.js";

/** Where the straight part of ITU-R BT.709 ends, in light and in codes. */
const REC709_LIGHT = 0.018;
const REC709_CODE = 4.5 * REC709_LIGHT;
type Axis = keyof RecordingPoint;

/** Along straight lines between points, the outer ones prolonged. */
function between(points: readonly RecordingPoint[], value: number, from: Axis, to: Axis): number {
  const after = points.findIndex((point) => point[from] > value);
  const upper = after < 0 ? points.length - 1 : Math.max(1, after);
  const [low, high] = [itemAt(points, upper - 1), itemAt(points, upper)];
  return low[to] + ((value - low[from]) / (high[from] - low[from])) * (high[to] - low[to]);
}

/** Share of the codes at a linear value. */
export function codeShare(curve: Transfer, linear: number): number {
  if (typeof curve !== "string") return between(curve, linear, "light_share", "code_share");
  if (curve === "linear") return linear;
  if (curve === "rec709") return linear < REC709_LIGHT ? 4.5 * linear : 1.099 * linear ** 0.45 - 0.099;
  if (curve === "log")
    return linear < LEAST_LOG
      ? (linear / LEAST_LOG - 1) / (LOG_STOPS * Math.LN2)
      : 1 + Math.log2(linear) / LOG_STOPS;
  const light = linear * HLG_WHITE;
  return light <= 1 / 12 ? Math.sqrt(3 * Math.max(0, light)) : HLG_A * Math.log(12 * light - HLG_B) + HLG_C;
}

/** The linear value at a share of the codes. */
export function linearAt(curve: Transfer, share: number): number {
  if (typeof curve !== "string") return between(curve, share, "code_share", "light_share");
  if (curve === "linear") return share;
  if (curve === "rec709") return share < REC709_CODE ? share / 4.5 : ((share + 0.099) / 1.099) ** (1 / 0.45);
  if (curve === "log")
    return share < 0 ? LEAST_LOG * (1 + share * LOG_STOPS * Math.LN2) : 2 ** ((share - 1) * LOG_STOPS);
  const light = share <= 0.5 ? (share * share) / 3 : (Math.exp((share - HLG_C) / HLG_A) + HLG_B) / 12;
  return light / HLG_WHITE;
}

/**
 * Where a card lies on a histogram or zebras of full codes, by the recording curve's own equation. Sources: Recommendation ITU-R BT.709,
 * item 1.2; ITU-R BT.2100-2, table 5 (HLG) with a white at 75 % of its codes (Report ITU-R BT.2408). Undefined for a logarithmic curve:
 * makers place white at anything from half to four fifths of the codes (from memory).
 */
import type { Camera, RecordingPoint } from "../scene/scene.js";
import { HLG_A, HLG_B, HLG_C, HLG_WHITE } from "./transfer.js";

/** What a white card sends back, of a perfect white; a grey card. */
export const WHITE_CARD = 0.9;
export const GREY_CARD = 0.18;

/** Share of the codes, in percent, of a card with this reflectance where a perfect white is exposed as the curve has it. */
export function cardLevelPercent(
  { recording_curve = "rec709", recording_curve_points: points }: Camera,
  reflectance: number,
): number | undefined {
  if (points) return 100 * between(points, reflectance);
  if (recording_curve === "log") return undefined;
  if (recording_curve === "linear") return 100 * reflectance;
  if (recording_curve === "rec709")
    return 100 * (reflectance < 0.018 ? 4.5 * reflectance : 1.099 * reflectance ** 0.45 - 0.099);
  const light = reflectance * HLG_WHITE;
  return 100 * (light <= 1 / 12 ? Math.sqrt(3 * light) : HLG_A * Math.log(12 * light - HLG_B) + HLG_C);
}

function between(points: readonly RecordingPoint[], light: number): number {
  let low: RecordingPoint = { light_share: 0, code_share: 0 };
  for (const point of points) {
    if (point.light_share >= light) {
      const share = (light - low.light_share) / (point.light_share - low.light_share || 1);
      return low.code_share + share * (point.code_share - low.code_share);
    }
    low = point;
  }
  return low.code_share;
}

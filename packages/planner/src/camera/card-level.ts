/**
 * Where a card lies on a histogram or zebras of full codes, by the recording curve's own equation. Sources: Recommendation ITU-R BT.709,
 * item 1.2; ITU-R BT.2100-2, table 5 (HLG) with a white at 75 % of its codes (Report ITU-R BT.2408). Undefined for a logarithmic curve:
 * makers place white at anything from half to four fifths of the codes (from memory).
 */
import type { Camera } from "../scene/scene.js";
import { codeShare } from "./code-curve.js";

/** What a white card sends back, of a perfect white; a grey card. */
export const WHITE_CARD = 0.9;
export const GREY_CARD = 0.18;

/** Share of the codes, in percent, of a card with this reflectance where a perfect white is exposed as the curve has it. */
export function cardLevelPercent(
  { recording_curve = "rec709", recording_curve_points: points }: Camera,
  reflectance: number,
): number | undefined {
  const curve = points ?? recording_curve;
  return curve === "log" ? undefined : 100 * codeShare(curve, reflectance);
}

/**
 * Back from what a picture stores to light: the inverse of the transfer curves of two standards, on 0 to 1.
 *
 * A camera's own picture profile is none of these: logarithmic and "flat" profiles, and any picture look, must be switched
 * off or undone by the maker's published curve first.
 * Sources: IEC 61966-2-1 (sRGB); Recommendation ITU-R BT.709, item 1.2.
 */
export type TransferCurve = "linear" | "srgb" | "rec709";

const srgb = (stored: number): number =>
  stored <= 0.04045 ? stored / 12.92 : ((stored + 0.055) / 1.055) ** 2.4;
const rec709 = (stored: number): number =>
  stored < 0.081 ? stored / 4.5 : ((stored + 0.099) / 1.099) ** (1 / 0.45);

/** Linear light, relative to the brightest that can be stored. @param stored 0 to 1. */
export function linearLight(stored: number, curve: TransferCurve): number {
  if (curve === "srgb") return srgb(stored);
  if (curve === "rec709") return rec709(stored);
  return stored;
}

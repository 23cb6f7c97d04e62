/**
 * What a diver may balance on without a card, as reflectance. Skin: Cooksey, Allen & Tsai 2017, people around the 10th, 50th and 90th
 * percentile of brightness, dry and in air. Sand: the mean of in-water spectra of `floor-reflectance.ts`. White slate, of plastic that has
 * yellowed a little, and a glove of grey neoprene: from memory. Only the shape bears on a balance, not how pale it is.
 */
import { SKIN_REFLECTANCE } from "../data/skin-reflectance.js";
import type { Spectrum } from "../spectrum/grid.js";
import { onGrid } from "../spectrum/resample.js";
import { floorReflectance } from "./floor-reflectance.js";

export const STAND_INS = ["white_slate", "pale_sand", "grey_glove", "hand"] as const;
export type StandIn = (typeof STAND_INS)[number];

/** From memory: most at home above 450 nm. */
const SLATE = [
  [380, 420, 460, 550, 780],
  [0.45, 0.72, 0.8, 0.83, 0.85],
] as const;
/** From memory: dark, a little warmer than neutral. */
const GLOVE = [
  [380, 550, 780],
  [0.055, 0.06, 0.07],
] as const;

const skin = (of: "dark" | "middle" | "pale"): Spectrum =>
  onGrid(SKIN_REFLECTANCE.wavelength_nm, SKIN_REFLECTANCE[of]);

/** Reflectance of each: the likely one first, then those about it where they are published. */
export function standInReflectances(standIn: StandIn): readonly [Spectrum, ...Spectrum[]] {
  if (standIn === "hand") return [skin("middle"), skin("dark"), skin("pale")];
  if (standIn === "pale_sand") return [floorReflectance("sand")];
  const [wavelength_nm, reflectance] = standIn === "white_slate" ? SLATE : GLOVE;
  return [onGrid(wavelength_nm, reflectance)];
}

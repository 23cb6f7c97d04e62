/**
 * The four words divers have for the colour of water, each as a stretch of the water family.
 *
 * A word fixes the hue mix; the turbidity comes from a Secchi depth or a visibility. The stretches were chosen so that
 * the colour of the open water seen horizontally just below the surface (scattering over beam attenuation times the
 * daylight left) has a dominant wavelength that goes by that name: blue up to 497 nm, blue-green 487 to 525, green 492 to
 * 572, brown from 545 on (the test beside this file computes it). They overlap, since people name colours
 * differently. Names and bounds: common practice, no published source.
 */
import type { Spectrum } from "../spectrum/grid.js";
import { coastalShareOfMix, familyKd } from "./hue-family.js";
import { secchiDepth_m } from "./secchi.js";
import { VISIBILITY_INDEX, visibilityFromBeam_m } from "./visibility.js";
import { type WaterOptics, waterFromKd } from "./water-optics.js";

export type WaterHue = "blue" | "blue_green" | "green" | "brown";

interface HueStretch {
  /** 0 oceanic, 1 green coastal, 2 brown. */
  hueMix: number;
  leastTurbidity_per_m: number;
  mostTurbidity_per_m: number;
}

const STRETCHES: Record<WaterHue, HueStretch> = {
  blue: { hueMix: 0, leastTurbidity_per_m: 5e-4, mostTurbidity_per_m: 0.085 },
  blue_green: { hueMix: 0.5, leastTurbidity_per_m: 0.02, mostTurbidity_per_m: 0.16 },
  green: { hueMix: 1, leastTurbidity_per_m: 0.03, mostTurbidity_per_m: 0.5 },
  brown: { hueMix: 2, leastTurbidity_per_m: 0.19, mostTurbidity_per_m: 5 },
};

/** From clearest to murkiest. */
export const WATER_HUES: readonly WaterHue[] = ["blue", "blue_green", "green", "brown"];

/** How far the hue mix behind a word may lie from its middle, standard deviation. Common practice, no published source. */
export const HUE_MIX_SIGMA = 0.25;

/** What can be read off a water by eye or disc, m. Both fall as turbidity rises. */
export type Clarity = "secchi_depth_m" | "visibility_m";

const READ_CLARITY: Record<Clarity, (water: WaterOptics) => number> = {
  secchi_depth_m: secchiDepth_m,
  visibility_m: (water) => visibilityFromBeam_m(water.beam_attenuation_per_m[VISIBILITY_INDEX]),
};

/** The hue mix that a word stands for: 0 oceanic, 1 green coastal, 2 brown. */
export function hueMixOf(hue: WaterHue): number {
  return STRETCHES[hue].hueMix;
}

const memberOf = (turbidity_per_m: number, hueMix: number): WaterOptics =>
  waterFromKd(familyKd(turbidity_per_m, hueMix), { coastalShare: coastalShareOfMix(hueMix) });

export type Range = readonly [least_m: number, most_m: number];

function readRange(
  clarity: Clarity,
  { hueMix, leastTurbidity_per_m, mostTurbidity_per_m }: HueStretch,
): Range {
  const read = (turbidity: number): number => READ_CLARITY[clarity](memberOf(turbidity, hueMix));
  return [read(mostTurbidity_per_m), read(leastTurbidity_per_m)];
}

const rangesOf = (clarity: Clarity): Record<WaterHue, Range> => ({
  blue: readRange(clarity, STRETCHES.blue),
  blue_green: readRange(clarity, STRETCHES.blue_green),
  green: readRange(clarity, STRETCHES.green),
  brown: readRange(clarity, STRETCHES.brown),
});

/** Least and greatest Secchi depth and visibility that a water of each hue shows, m. */
export const CLARITY_RANGES: Record<Clarity, Record<WaterHue, Range>> = {
  secchi_depth_m: rangesOf("secchi_depth_m"),
  visibility_m: rangesOf("visibility_m"),
};

/**
 * The turbidity at which a water of this mix shows this Secchi depth or visibility, by bisection in its logarithm over
 * the whole family; the nearest end where no member does.
 */
export function turbidityFor(clarity: Clarity, value_m: number, hueMix: number): number {
  let low = Math.log(STRETCHES.blue.leastTurbidity_per_m);
  let high = Math.log(STRETCHES.brown.mostTurbidity_per_m);
  for (let step = 0; step < 36; step++) {
    const middle = (low + high) / 2;
    const seen = READ_CLARITY[clarity](memberOf(Math.exp(middle), hueMix));
    if (seen > value_m) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

/** Diffuse attenuation of the family's member with this mix that shows this Secchi depth or visibility, 1/m. */
export function kdForClarity(clarity: Clarity, value_m: number, hueMix: number): Spectrum {
  return familyKd(turbidityFor(clarity, value_m, hueMix), hueMix);
}

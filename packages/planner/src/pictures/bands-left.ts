import { multiply, type Spectrum, Y_BAR } from "@sunfathom/optics";
import { band } from "../attenuation/band.js";
import { valueAt } from "../lists/non-empty.js";

/** Parts of the light as people name them, and all of it as the eye weighs it. */
export const LIGHTS = ["red", "green", "blue", "eye"] as const;
export type Light = (typeof LIGHTS)[number];

/** The bounds are round ones: red is that of `red_to_tenth_depth_m`. */
export const BANDS_NM = { red: [600, 700], green: [500, 600], blue: [400, 500] } as const;

const WEIGHTS: Readonly<Record<Light, Spectrum>> = {
  red: band(...BANDS_NM.red),
  green: band(...BANDS_NM.green),
  blue: band(...BANDS_NM.blue),
  eye: Y_BAR,
};

const sum = (spectrum: Spectrum): number => spectrum.reduce((total, value) => total + value, 0);

/** Loss of each part from just below the surface, in stops, depth by depth. */
export type BandLosses = Record<Light, Float64Array>;

/** @param light just below the surface */
export function bandLosses(light: Spectrum, kd_per_m: Spectrum, depths_m: readonly number[]): BandLosses {
  const lossesOf = (weight: Spectrum): Float64Array => {
    const seen = multiply(light, weight);
    const top = sum(seen);
    // Of one part there may be less left than any number says, where another part goes far: told from the clearest colour on.
    let clearest_per_m = Number.POSITIVE_INFINITY;
    for (let i = 0; i < seen.length; i++)
      if (valueAt(seen, i) > 0) clearest_per_m = Math.min(clearest_per_m, valueAt(kd_per_m, i));
    return Float64Array.from(depths_m, (depth_m) => {
      let rest = 0;
      for (let i = 0; i < seen.length; i++)
        rest += valueAt(seen, i) * Math.exp(Math.min(0, clearest_per_m - valueAt(kd_per_m, i)) * depth_m);
      return clearest_per_m * depth_m * Math.LOG2E - Math.log2(rest / top);
    });
  };
  const { red, green, blue, eye } = WEIGHTS;
  return { red: lossesOf(red), green: lossesOf(green), blue: lossesOf(blue), eye: lossesOf(eye) };
}

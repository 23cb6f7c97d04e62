/**
 * Absorption bands of filters as density per unit of nominal density, 0 to 1.
 *
 * No standard publishes such curves: the shapes are assumptions (logistic edges and a Gaussian band of the kind that dyed
 * plastics and gels show), to be varied in the uncertainty and replaced by a measured curve where one is at hand.
 */
import { type Spectrum, spectrumFrom } from "../spectrum/grid.js";

export type FilterKind = "red" | "magenta" | "blue" | "green" | "neutral";

/** How a plausible other filter of the same kind and nominal density differs. */
export interface FilterShape {
  /** Moves the edge or the centre of the band, nm. */
  shift_nm?: number;
  /** Widens the edge or the band, 1 for the nominal one. */
  widthScale?: number;
}

const logistic = (x: number) => 1 / (1 + Math.exp(-x));

interface Band {
  use: "lens" | "lamp" | "lens_or_lamp";
  density(nm: number, shift_nm: number, widthScale: number): number;
}

export const FILTER_BANDS: Record<FilterKind, Band> = {
  red: {
    use: "lens",
    density: (nm, shift, width) => logistic((580 + shift - nm) / (10 * width)),
  },
  magenta: {
    use: "lens",
    density: (nm, shift, width) => Math.exp(-(((nm - 540 - shift) / (35 * width)) ** 2) / 2),
  },
  blue: {
    use: "lamp",
    density: (nm, shift, width) => logistic((nm - 585 - shift) / (12 * width)),
  },
  green: {
    use: "lamp",
    density: (nm, shift, width) =>
      Math.max(logistic((nm - 585 - shift) / (12 * width)), logistic((480 - shift - nm) / (12 * width))),
  },
  neutral: {
    use: "lens_or_lamp",
    density: () => 1,
  },
};

export const FILTER_KINDS = Object.keys(FILTER_BANDS) as FilterKind[];

/** Density per unit of nominal density on the grid. */
export function densityShape(kind: FilterKind, { shift_nm = 0, widthScale = 1 }: FilterShape = {}): Spectrum {
  return spectrumFrom((nm) => FILTER_BANDS[kind].density(nm, shift_nm, widthScale));
}

import { z } from "zod/v3";
import { choice, list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { sceneDefaults } from "./defaults.js";
import { filterChanges, filterKinds } from "./values.js";

export const FilterKind = z
  .enum(filterKinds)
  .describe(
    "Kind of a filter, by the light that it lets through: `red`, `magenta`, `blue` and `green` (for video lights) or `neutral` (all alike).",
  );

export const FilterChange = z
  .enum(filterChanges)
  .describe(
    "Whether the lens filter can be changed under water: `none`, `flip` (a flip mount) or `clip_on`.",
  );

/** Density of a filter, on a lens or on a lamp. */
export const filterDensity = {
  unit: "1",
  min: 0.05,
  max: 3,
  example: 0.6,
} as const;

/** The same in stops of the light that the filter holds back most, as shops sell them: a stop is a density of 0.3. */
export const filterStops = {
  unit: "1",
  min: 0.17,
  max: 9.9,
  example: 2,
} as const;

export const TransmittanceSample = z
  .object({
    wavelength_nm: quantity({
      description: "Wavelength of the light, in air.",
      unit: "nm",
      min: 380,
      max: 780,
      example: 600,
    }),
    transmittance: quantity({
      description: "Share of the light at that wavelength that passes the filter.",
      unit: "1",
      min: 0,
      max: 1,
      example: 0.85,
    }),
  })
  .strict()
  .describe("What a filter lets through at one wavelength.");

/** Resolved to a density. */
export const lensFilterStops = {
  filter_stops: quantity({
    ...filterStops,
    description:
      "Strength of the filter on the lens in stops, in the band that its kind absorbs, in place of `filter_density`: a stop is a density of 0.3. With `filter_kind`.",
  }),
};

/** The filter on the lens; none of the first three means that there is none. */
export const lensFilterFields = {
  filter_kind: choice(FilterKind, {
    description:
      "Kind of the filter on the lens. With `filter_density` or `filter_stops`; no filter when left out.",
    example: "red",
  }),
  filter_density: quantity({
    ...filterDensity,
    description:
      "Peak optical density of the filter on the lens, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`. Or `filter_stops`.",
  }),
  filter_transmittance: list(TransmittanceSample, {
    description:
      "Measured curve of the filter on the lens, in place of kind and density: 2 to 401 samples, wavelengths rising.",
    minItems: 2,
    maxItems: 401,
    example: [
      { wavelength_nm: 450, transmittance: 0.25 },
      { wavelength_nm: 550, transmittance: 0.3 },
      { wavelength_nm: 650, transmittance: 0.9 },
    ],
  }),
  filter_change_underwater: choice(FilterChange, {
    description:
      "Whether the lens filter can be changed under water. Where it is left out beside a `holder` that flips or clips on, it can, in that way.",
    example: "flip",
    default: sceneDefaults.filter_change_underwater,
  }),
};

import { z } from "zod/v3";
import { choice, list, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { filterSamplesField } from "./filter-samples.js";
import { FilterKind, filterDensity, filterStops, TransmittanceSample } from "./lens-filter.js";
import { kitItems } from "./values.js";

export const KitItemName = z.enum(kitItems).describe("What an item of the kit is.");

export const kitItemFields = {
  id: text({ description: "Your own name for it; answers use it.", example: "red-55", maxLength: 64 }),
  item: choice(KitItemName, { description: "What it is.", example: "lens_filter" }),
  filter_kind: choice(FilterKind, {
    description: "Kind of a filter. With `filter_density` or `filter_stops`.",
    example: "red",
  }),
  filter_density: quantity({
    ...filterDensity,
    description:
      "Peak optical density of a filter, above that of its clear glass, in the band that its kind absorbs. With `filter_kind`.",
  }),
  filter_transmittance: list(TransmittanceSample, {
    description:
      "Measured curve of a filter, in place of kind and density: 2 to 401 samples, wavelengths rising. Answers call it by the kind whose curve is most like it.",
    minItems: 2,
    maxItems: 401,
    example: [
      { wavelength_nm: 450, transmittance: 0.25 },
      { wavelength_nm: 650, transmittance: 0.9 },
    ],
  }),
};

const mayBeAbsent = ["filter_kind", "filter_density", "filter_transmittance"] as const;

/** What an item is given by, one way or another. */
export const givenKitFields = withOptional(
  {
    ...kitItemFields,
    filter_stops: quantity({
      ...filterStops,
      description:
        "Strength of a filter in stops, in the band that its kind absorbs, in place of `filter_density`: a stop is a density of 0.3. With `filter_kind`.",
    }),
    ...filterSamplesField("A filter"),
  },
  [...mayBeAbsent, "filter_stops", "filter_samples"],
);

export const KitItem = z.object(givenKitFields).strict().describe("An item that you own.");

export const ResolvedKitItem = z
  .object(withOptional(kitItemFields, mayBeAbsent))
  .describe("An item that you own, a filter by its density or its curve.");

const mostItems = 64;
const example = [
  { id: "red-55", item: "lens_filter", filter_kind: "red", filter_density: 0.6 },
  { id: "magenta-55", item: "lens_filter", filter_kind: "magenta", filter_density: 0.4 },
] as const;

export const kitField = {
  kit: list(KitItem, {
    description: "What you own: filters are then chosen only from it. Any filter by default.",
    maxItems: mostItems,
    example,
  }),
};

export const resolvedKitField = {
  kit: list(ResolvedKitItem, {
    description: "What you own: filters are then chosen only from it.",
    maxItems: mostItems,
    example,
  }),
};

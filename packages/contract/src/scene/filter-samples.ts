import { z } from "zod/v3";
import { choice, list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { FilterKind, TransmittanceSample } from "./lens-filter.js";

const value = (colour: string, how: string, example: number) =>
  quantity({
    description: `Mean of the card in the ${colour} channel ${how} the filter, linear (raw), 1 for the brightest possible.`,
    unit: "1",
    min: 0.0001,
    max: 1,
    example,
  });

/** Linear RGB of one grey card in daylight, with and without a filter. */
export const FilterSample = z
  .object({
    red_without: value("red", "without", 0.4),
    green_without: value("green", "without", 0.5),
    blue_without: value("blue", "without", 0.45),
    red_with: value("red", "with", 0.34),
    green_with: value("green", "with", 0.15),
    blue_with: value("blue", "with", 0.12),
  })
  .strict()
  .describe(
    "A grey card in daylight, above water, photographed without and with a filter at the same exposure and white balance.",
  );

export const filterSamplesField = (whose: string) => ({
  filter_samples: list(FilterSample, {
    description: `${whose}, by a grey card photographed with and without it, in place of kind, density and curve: 1 to 16 pairs of pictures. Resolved to the kind and density that lose the same; \`filter_fits\` of the scene says how well.`,
    minItems: 1,
    maxItems: 16,
    example: [
      {
        red_without: 0.4,
        green_without: 0.5,
        blue_without: 0.45,
        red_with: 0.34,
        green_with: 0.15,
        blue_with: 0.12,
      },
    ],
  }),
});

export const FilterMatch = z
  .object({
    id: text({ description: "`id` of the other filter.", example: "sheet-red", maxLength: 64 }),
    differ_stops: quantity({
      description:
        "By how much the two differ in the channel in which they differ most. Below a third of a stop one can stand in for the other without a change of settings.",
      unit: "stop",
      decimals: 2,
      min: 0,
      max: 30,
      example: 0.2,
    }),
  })
  .describe("How far one filter is from another, by what the cards lost.");

export const FilterFit = z
  .object({
    id: text({
      description: "`id` in the kit; absent for the filter on the lens.",
      example: "red-55",
      maxLength: 64,
    }).optional(),
    filter_kind: choice(FilterKind, {
      description: "The kind that loses what the card lost.",
      example: "red",
    }),
    filter_density: quantity({
      description: "Its density.",
      unit: "1",
      decimals: 2,
      min: 0,
      max: 3,
      example: 0.6,
    }),
    density_standard_error: quantity({
      description:
        "Standard error of the density. Above the density itself the pictures tell no filter of a kind.",
      unit: "1",
      decimals: 3,
      min: 0,
      max: 1000,
      example: 0.02,
    }),
    residual_stops: quantity({
      description:
        "Root mean square over the channels of what is left between card and filter. Above 0.15 no kind is quite like it: give `filter_transmittance`.",
      unit: "stop",
      decimals: 2,
      min: 0,
      max: 30,
      example: 0.04,
    }),
    filter_transmittance: list(TransmittanceSample, {
      description: "Curve of that kind and density, every 20 nm.",
      example: [{ wavelength_nm: 600, transmittance: 0.85 }],
    }),
    matches: list(FilterMatch, {
      description:
        "Other filters that were sampled: whether a cut sheet and a glass filter match, and within what.",
      example: [{ id: "sheet-red", differ_stops: 0.2 }],
    }),
  })
  .describe("The filter that pictures of a grey card were found to show.");

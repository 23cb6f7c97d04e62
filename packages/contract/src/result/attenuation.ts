import { z } from "zod/v3";
import { list } from "../field/choice.js";
import { quantity, quantityList } from "../field/quantity.js";
import { CardFit } from "./card-fit.js";
import { answerHead, answerTail } from "./common.js";
import { DepthEstimate, IlluminanceEstimate, LossEstimate, PercentEstimate } from "./estimates.js";
import { cct_K, depth, duv } from "./quantities.js";

const exampleLoss = { low: 2.61, likely: 3.04, high: 3.52 };
const examplePercent = { low: 8.7, likely: 12.2, high: 16.4 };

function loss(what: string) {
  return LossEstimate.describe(`${what} lost between just below the surface and this depth, in stops.`);
}

function left(what: string) {
  return PercentEstimate.describe(
    `${what} left at this depth, in percent of what there is just below the surface.`,
  );
}

function chromaticity(axis: "x" | "y", example: number) {
  const description = `CIE 1931 chromaticity ${axis} of the light at this depth.`;
  return quantity({ description, unit: "1", decimals: 4, min: 0, max: 1, example });
}

export const DepthLight = z
  .object({
    depth_m: depth("Depth that this part of the answer is for.", 12),
    red_loss_stops: loss("Light in the red channel of a typical sensor"),
    green_loss_stops: loss("Light in the green channel of a typical sensor"),
    blue_loss_stops: loss("Light in the blue channel of a typical sensor"),
    photopic_loss_stops: loss("Light as the eye weighs it"),
    par_loss_stops: loss("Photosynthetically active radiation (400 to 700 nm, photons)"),
    red_left_percent: left("Light in the red channel of a typical sensor"),
    green_left_percent: left("Light in the green channel of a typical sensor"),
    blue_left_percent: left("Light in the blue channel of a typical sensor"),
    photopic_left_percent: left("Light as the eye weighs it"),
    par_left_percent: left("Photosynthetically active radiation (400 to 700 nm, photons)"),
    spectrum_left: quantityList({
      description:
        "Share of the light just below the surface that is left, one for each of `wavelengths_nm`.",
      unit: "1",
      decimals: 6,
      min: 0,
      max: 1,
      example: 0.42,
      minItems: 1,
      maxItems: 1000,
      examples: [0.42, 0.31, 0.002],
    }),
    x: chromaticity("x", 0.2134),
    y: chromaticity("y", 0.2971),
    duv: duv("Distance of the light from the Planckian locus in CIE 1960 uv, positive above it."),
    cct_K: cct_K(
      "Correlated colour temperature; absent where |duv| is above 0.05 and it has no meaning.",
    ).optional(),
    illuminance_lx: IlluminanceEstimate.describe(
      "Illuminance on a horizontal surface at this depth; absent without daylight.",
    ).optional(),
  })
  .describe("The light that falls on a horizontal surface at one depth.");

export const AttenuationAnswer = z
  .object({
    ...answerHead,
    wavelengths_nm: quantityList({
      description: "Wavelengths of every `spectrum_left` in this answer.",
      unit: "nm",
      decimals: 1,
      min: 300,
      max: 1000,
      example: 450,
      minItems: 1,
      maxItems: 1000,
      examples: [450, 550, 650],
    }),
    depths: list(DepthLight, {
      description: "The light at depths from shallow to deep.",
      example: [
        {
          depth_m: 12,
          red_loss_stops: exampleLoss,
          green_loss_stops: exampleLoss,
          blue_loss_stops: exampleLoss,
          photopic_loss_stops: exampleLoss,
          par_loss_stops: exampleLoss,
          red_left_percent: examplePercent,
          green_left_percent: examplePercent,
          blue_left_percent: examplePercent,
          photopic_left_percent: examplePercent,
          par_left_percent: examplePercent,
          spectrum_left: [0.42, 0.31, 0.002],
          x: 0.2134,
          y: 0.2971,
          duv: 0.0312,
        },
      ],
    }),
    card_fit: CardFit.describe(
      "How well a water fits `card_samples`; present where they describe the water.",
    ).optional(),
    red_to_tenth_depth_m: DepthEstimate.describe(
      "Depth at which light above 600 nm is down to a tenth of what it is just below the surface.",
    ),
    red_to_hundredth_depth_m: DepthEstimate.describe(
      "Depth at which light above 600 nm is down to a hundredth of what it is just below the surface.",
    ),
    ...answerTail,
  })
  .describe("What the water leaves of the light, by depth.");
export type AttenuationAnswer = z.infer<typeof AttenuationAnswer>;

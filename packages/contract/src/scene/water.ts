import { z } from "zod/v3";
import { choice, list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { cardFields } from "./card.js";
import { waterHues, waterTypes } from "./values.js";

export const WaterType = z
  .enum(waterTypes)
  .describe(
    "Optical water type by N. G. Jerlov, edition of 1976: I (clearest) to III for the open ocean, 1C to 9C (most turbid) for coasts.",
  );

export const KdSample = z
  .object({
    wavelength_nm: quantity({
      description: "Wavelength of the light, in air.",
      unit: "nm",
      min: 380,
      max: 780,
      example: 490,
    }),
    kd_per_m: quantity({
      description: "Diffuse attenuation of downwelling light at that wavelength.",
      unit: "1/m",
      min: 0.005,
      max: 20,
      example: 0.035,
    }),
  })
  .strict()
  .describe("Attenuation measured at one wavelength.");

const waterHueText = "What divers call the colour of the water, seen horizontally.";

export const WaterHue = z.enum(waterHues).describe(waterHueText);

/** Ways to describe the water, of which a scene takes exactly one, with what goes with them. */
export const waterFields = {
  water_type: choice(WaterType, {
    description: "The water, by its optical type (Jerlov, edition of 1976). One way to describe the water.",
    example: "IB",
  }),
  chlorophyll_mg_m3: quantity({
    description:
      "The water, by its chlorophyll: for open sea, whose colour follows the plankton. One way to describe the water.",
    unit: "mg/m3",
    min: 0.02,
    max: 20,
    example: 0.3,
  }),
  secchi_depth_m: quantity({
    description:
      "The water, by the depth at which a white disc of 30 cm vanishes from above. With `water_hue`. One way to describe the water.",
    unit: "m",
    min: 0.3,
    max: 90,
    example: 15,
  }),
  visibility_m: quantity({
    description:
      "The water, by the horizontal distance at which a dark body vanishes: what divers call visibility. With `water_hue`. One way to describe the water.",
    unit: "m",
    min: 0.2,
    max: 120,
    example: 20,
  }),
  water_hue: choice(WaterHue, {
    description: `${waterHueText} With \`secchi_depth_m\` or \`visibility_m\`.`,
    example: "blue",
  }),
  kd_samples: list(KdSample, {
    description:
      "The water, by its measured diffuse attenuation: 2 to 64 samples, wavelengths rising. One way to describe the water.",
    minItems: 2,
    maxItems: 64,
    example: [
      { wavelength_nm: 450, kd_per_m: 0.06 },
      { wavelength_nm: 550, kd_per_m: 0.09 },
      { wavelength_nm: 650, kd_per_m: 0.38 },
    ],
  }),
  ...cardFields,
};

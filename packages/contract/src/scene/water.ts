import { z } from "zod/v3";
import { choice, list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { waterTypes } from "./values.js";

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

/** Ways to describe the water; a scene takes exactly one. */
export const waterFields = {
  water_type: choice(WaterType, {
    description: "The water, by its optical type (Jerlov, edition of 1976). One way to describe the water.",
    example: "IB",
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
};

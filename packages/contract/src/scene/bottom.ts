import { z } from "zod/v3";
import { choice, list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { bottomBelowDeepest_m, sceneDefaults } from "./defaults.js";
import { bottoms } from "./values.js";

export const Bottom = z
  .enum(bottoms)
  .describe("What the sea floor below is: `none` where it is too deep to affect the light.");

export const ReflectanceSample = z
  .object({
    wavelength_nm: quantity({
      description: "Wavelength of the light, in air.",
      unit: "nm",
      min: 380,
      max: 780,
      example: 550,
    }),
    reflectance: quantity({
      description: "Share of the light at that wavelength that the floor sends back.",
      unit: "1",
      min: 0,
      max: 1,
      example: 0.25,
    }),
  })
  .strict()
  .describe("What a sea floor reflects at one wavelength.");

/** The sea floor, which sends light up to the subject and into the water. */
export const bottomFields = {
  bottom: choice(Bottom, {
    description:
      "The sea floor below your subject, which lights it from below. Most of what divers film is over a reef (common practice).",
    example: "sand",
    default: sceneDefaults.bottom,
  }),
  bottom_reflectance: list(ReflectanceSample, {
    description:
      "Measured reflectance of the sea floor, in place of `bottom`: 2 to 401 samples, wavelengths rising.",
    minItems: 2,
    maxItems: 401,
    example: [
      { wavelength_nm: 450, reflectance: 0.2 },
      { wavelength_nm: 550, reflectance: 0.25 },
      { wavelength_nm: 650, reflectance: 0.3 },
    ],
  }),
  bottom_depth_m: quantity({
    description: `Depth of the sea floor, not above the deepest subject. ${bottomBelowDeepest_m} m below the deepest subject by default.`,
    unit: "m",
    min: 0.1,
    max: 1000,
    example: 14,
  }),
};

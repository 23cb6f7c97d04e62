import { z } from "zod/v3";
import { list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { depth } from "./quantities.js";

const perMetre = { unit: "1/m", decimals: 4, min: -100, max: 100 } as const;
const kd = (description: string, example: number) => quantity({ ...perMetre, description, example });
const stops = (description: string, example: number) =>
  quantity({ description, unit: "stop", decimals: 3, min: -100, max: 100, example });

export const CardResidual = z
  .object({
    depth_m: depth("Depth of the card.", 12),
    red_stops: stops("Measured over fitted light of the red channel.", 0.02),
    green_stops: stops("The same of green.", -0.01),
    blue_stops: stops("The same of blue.", 0.01),
  })
  .describe("How far one card lies from the fitted water.");

export const CardFit = z
  .object({
    red_kd_per_m: kd(
      "Attenuation of the red channel's light between the shallowest and the deepest card; absent where exposures are unknown, as are green and blue.",
      0.171,
    ).optional(),
    red_kd_standard_error_per_m: kd("Its standard error.", 0.004).optional(),
    green_kd_per_m: kd("The same of green.", 0.072).optional(),
    green_kd_standard_error_per_m: kd("Its standard error.", 0.003).optional(),
    blue_kd_per_m: kd("The same of blue.", 0.045).optional(),
    blue_kd_standard_error_per_m: kd("Its standard error.", 0.003).optional(),
    red_minus_green_kd_per_m: kd("Red's attenuation less green's, which needs no exposures.", 0.099),
    red_minus_green_kd_standard_error_per_m: kd("Its standard error.", 0.003),
    blue_minus_green_kd_per_m: kd("Blue's attenuation less green's.", -0.027),
    blue_minus_green_kd_standard_error_per_m: kd("Its standard error.", 0.002),
    rms_residual_stops: stops("Root mean square of measured over fitted light.", 0.02),
    residuals: list(CardResidual, {
      description: "Each card, in the order given.",
      example: [{ depth_m: 12, red_stops: 0.02, green_stops: -0.01, blue_stops: 0.01 }],
    }),
  })
  .describe("How well a water fits the card samples.");

import { z } from "zod/v3";
import { choice, list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { answerHead, answerTail } from "./common.js";
import { ExposureValueEstimate, IlluminanceEstimate, LossEstimate } from "./estimates.js";
import { depth } from "./quantities.js";

export const ExposureVerdict = z
  .enum(["fits", "too_dark", "too_bright"])
  .describe("Whether the camera's limits hold an exposure for this light.");

export const ExposureAtDepth = z
  .object({
    depth_m: depth("Depth that this part of the answer is for.", 12),
    surface_loss_stops: LossEstimate.describe(
      "Daylight lost at the surface; absent without daylight.",
    ).optional(),
    depth_loss_stops: LossEstimate.describe(
      "Daylight lost on the way down; absent without daylight.",
    ).optional(),
    upright_loss_stops: LossEstimate.describe(
      "What an upright subject receives less than a horizontal surface; absent without daylight.",
    ).optional(),
    distance_loss_stops: LossEstimate.describe("Light lost between subject and camera."),
    lens_filter_loss_stops: LossEstimate.describe("Light lost in the filter on the lens; zero without one."),
    lamp_filter_loss_stops: LossEstimate.describe(
      "Light lost in the filters on the lamps; absent without lamps.",
    ).optional(),
    total_loss_stops: LossEstimate.describe(
      "All losses of daylight together; absent without daylight.",
    ).optional(),
    subject_illuminance_lx: IlluminanceEstimate.describe(
      "Illuminance on the upright subject, daylight and lamps together.",
    ),
    exposure_value_ev100: ExposureValueEstimate.describe(
      "Exposure value at ISO 100 that a grey subject asks for, filter and distance included.",
    ),
    verdict: choice(ExposureVerdict, {
      description: "Whether the exposure fits the camera.",
      example: "fits",
    }),
    iso: quantity({
      description: "ISO speed to set; the nearest that the camera has when the exposure does not fit.",
      unit: "1",
      decimals: 0,
      min: 25,
      max: 409600,
      example: 400,
    }),
    f_number: quantity({
      description: "Aperture to set; the nearest that the lens has when the exposure does not fit.",
      unit: "1",
      decimals: 1,
      min: 0.7,
      max: 64,
      example: 4,
    }),
    shutter_s: quantity({
      description: "Exposure time of a frame.",
      unit: "s",
      decimals: 8,
      min: 0.00001,
      max: 60,
      example: 0.02,
    }),
    shortfall_stops: LossEstimate.describe(
      "Light missing at the most sensitive settings; present when `too_dark`.",
    ).optional(),
    excess_stops: LossEstimate.describe(
      "Light in excess at the least sensitive settings; present when `too_bright`.",
    ).optional(),
    neutral_density_needed: quantity({
      description: "Neutral density that takes the excess away; present when `too_bright`.",
      unit: "1",
      decimals: 2,
      min: 0,
      max: 100,
      example: 0.6,
    }).optional(),
    f_number_needed: quantity({
      description: "Aperture that takes the excess away; present when `too_bright`.",
      unit: "1",
      decimals: 1,
      min: 0.7,
      max: 1000000,
      example: 22,
    }).optional(),
  })
  .describe(
    "The budget of light from the surface to the sensor at one depth, and the settings that pay for it.",
  );

const exampleLoss = { low: 2.61, likely: 3.04, high: 3.52 };

export const ExposureLossAnswer = z
  .object({
    ...answerHead,
    depths: list(ExposureAtDepth, {
      description: "Losses and settings at depths from shallow to deep.",
      example: [
        {
          depth_m: 12,
          distance_loss_stops: { low: 0.12, likely: 0.2, high: 0.33 },
          lens_filter_loss_stops: { low: 0, likely: 0, high: 0 },
          total_loss_stops: exampleLoss,
          subject_illuminance_lx: { low: 2900, likely: 4100, high: 5600 },
          exposure_value_ev100: { low: 6.9, likely: 7.6, high: 8.2 },
          verdict: "fits",
          iso: 400,
          f_number: 4,
          shutter_s: 0.02,
        },
      ],
    }),
    ...answerTail,
  })
  .describe("Where the light is lost between surface and sensor, and what pays for it.");
export type ExposureLossAnswer = z.infer<typeof ExposureLossAnswer>;

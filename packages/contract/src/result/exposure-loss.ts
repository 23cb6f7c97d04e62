import { z } from "zod/v3";
import { choice, flag, list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { answerHead, answerTail, code, parameters } from "./common.js";
import {
  ExposureValueEstimate,
  IlluminanceEstimate,
  LossEstimate,
  LossOrGainEstimate,
  PercentEstimate,
} from "./estimates.js";
import { depth, fNumber, iso, neutralDensity, shutter_s } from "./quantities.js";

export const ExposureVerdict = z
  .enum(["fits", "too_dark", "too_bright"])
  .describe("Whether the camera can expose this light within its limits.");

export const WayToPayKind = z
  .enum(["iso", "aperture", "shutter", "lamp", "higher_sun", "shallower", "filter_off", "neutral_density"])
  .describe("Something that makes up for lost light, or cuts an excess of it.");

const exampleWay = {
  way: "iso",
  code: "wide_open",
  text: "Aperture wide open at f/2.8: ISO 800.",
  parameters: { f_number: 2.8, iso: 800 },
  gains_stops: 0,
  enough: true,
  iso: 800,
} as const;

export const WayToPay = z
  .object({
    way: choice(WayToPayKind, { description: "What to change.", example: exampleWay.way }),
    code: code(exampleWay.code),
    text: text({ description: "The same in a sentence.", example: exampleWay.text }),
    parameters: parameters({ example: exampleWay.parameters }),
    gains_stops: quantity({
      description: "Light or sensitivity that it gains; negative where it cuts light.",
      unit: "stop",
      decimals: 2,
      min: -10000,
      max: 10000,
      example: exampleWay.gains_stops,
    }),
    enough: flag({ description: "Whether it is enough on its own.", example: exampleWay.enough }),
    iso: iso("`iso`: the speed that it comes to.").optional(),
    f_number: fNumber("`aperture`: the f-number that it comes to.").optional(),
    shutter_s: shutter_s("`shutter`: the exposure time that it comes to.").optional(),
    neutral_density: neutralDensity("`neutral_density`: its density.").optional(),
    depth_m: depth("`shallower`: the depth that it comes to.", 8).optional(),
    sun_elevation_deg: quantity({
      description: "`higher_sun`: the height of the sun that it comes to.",
      unit: "deg",
      decimals: 0,
      min: 0,
      max: 90,
      example: 62,
    }).optional(),
    lamp_flux_lm: quantity({
      description: "`lamp`: flux that a video light with a beam of 100 degrees would need at 0.8 m.",
      unit: "lm",
      decimals: 0,
      min: 0,
      max: 1e12,
      example: 3200,
    }).optional(),
  })
  .describe("A way to make up for lost light, or to get rid of too much.");

export const ExposureAtDepth = z
  .object({
    depth_m: depth("Depth that this part of the answer is for.", 12),
    surface_loss_stops: LossEstimate.describe(
      "Daylight lost at the surface; absent without daylight.",
    ).optional(),
    depth_loss_stops: LossEstimate.describe(
      "Daylight lost on the way down; absent without daylight.",
    ).optional(),
    upright_loss_stops: LossOrGainEstimate.describe(
      "How much less light a solid subject receives than a level surface, as a dome receptor meters it; negative where it receives more, facing a low sun or over a pale floor. Absent without daylight.",
    ).optional(),
    distance_loss_stops: LossEstimate.describe("Light lost between subject and camera."),
    port_loss_stops: LossEstimate.describe(
      "Light lost at the port, flat or dome: it spreads as it leaves the water, and two surfaces reflect.",
    ),
    lens_filter_loss_stops: LossEstimate.describe("Light lost in the filter on the lens; zero without one."),
    lamp_filter_loss_stops: LossEstimate.describe(
      "Light lost in the filters on the video lights; absent without video lights.",
    ).optional(),
    total_loss_stops: LossEstimate.describe(
      "All losses of daylight together; absent without daylight.",
    ).optional(),
    subject_illuminance_lx: IlluminanceEstimate.describe(
      "Illuminance on the subject, daylight and video lights together, as a dome receptor in its place that faces the camera meters it.",
    ),
    exposure_value_ev100: ExposureValueEstimate.describe(
      "Subject level: exposure value at ISO 100 that a dome receptor meters on a solid subject (ISO 2720, C = 340), distance, port and filter included. Settings and verdict go by this plus `haze_gain_stops`.",
    ),
    card_exposure_value_ev100: ExposureValueEstimate.describe(
      "The same for a flat card square to the camera, which tilts with it, as a flat receptor of ISO 2720 (C = 250) in its place meters it. Upright under a high sun it gets less light than a dome, which also sees what comes from above.",
    ),
    haze_gain_stops: LossEstimate.describe(
      "How much brighter haze makes the subject, as the camera meters it: daylight that the water in front of it scatters into the lens. It costs contrast. Absent without daylight.",
    ).optional(),
    scene_exposure_value_ev100: ExposureValueEstimate.describe(
      "Scene level: exposure value at ISO 100 that a meter in the housing reads, averaged over the picture: a third subject, a third sea floor where there is one, and the rest open water (shares are a judgement). Absent without daylight.",
    ).optional(),
    verdict: choice(ExposureVerdict, {
      description: "Whether the exposure fits the camera.",
      example: "fits",
    }),
    iso: iso("ISO speed to set; the nearest that the camera has when the exposure does not fit."),
    f_number: fNumber("Aperture to set; the nearest that the lens has when the exposure does not fit."),
    shutter_s: shutter_s("Exposure time of a frame."),
    shortfall_stops: LossEstimate.describe(
      "Light missing at the most sensitive settings; present when `too_dark`.",
    ).optional(),
    excess_stops: LossEstimate.describe(
      "Light in excess at the least sensitive settings; present when `too_bright`.",
    ).optional(),
    neutral_density_needed: neutralDensity(
      "Density of the ND filter that cuts the excess; present when `too_bright`.",
    ).optional(),
    f_number_needed: quantity({
      description: "Aperture that cuts the excess; present when `too_bright`.",
      unit: "1",
      decimals: 1,
      min: 0.7,
      max: 1000000,
      example: 22,
    }).optional(),
    contrast_left_percent: PercentEstimate.describe(
      "Contrast against open water that is left at the camera; haze takes the rest.",
    ),
    ways_to_pay: list(WayToPay, {
      description:
        "What makes up for the loss, or cuts the excess; those that are enough on their own first.",
      example: [exampleWay],
    }),
  })
  .describe(
    "The budget of light from the surface to the sensor at one depth, and the settings that make up for it.",
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
          port_loss_stops: { low: 0.91, likely: 0.91, high: 0.91 },
          lens_filter_loss_stops: { low: 0, likely: 0, high: 0 },
          total_loss_stops: exampleLoss,
          subject_illuminance_lx: { low: 2900, likely: 4100, high: 5600 },
          exposure_value_ev100: { low: 6.9, likely: 7.6, high: 8.2 },
          card_exposure_value_ev100: { low: 7.1, likely: 7.8, high: 8.4 },
          verdict: "fits",
          iso: 400,
          f_number: 4,
          shutter_s: 0.02,
          contrast_left_percent: { low: 72, likely: 80, high: 86 },
          ways_to_pay: [exampleWay],
        },
      ],
    }),
    ...answerTail,
  })
  .describe("Where light is lost between surface and sensor, and what makes up for it.");
export type ExposureLossAnswer = z.infer<typeof ExposureLossAnswer>;

import { z } from "zod/v3";
import { choice, list, text } from "../field/choice.js";
import { quantity, quantityList } from "../field/quantity.js";
import { FilterKind } from "../scene/lens-filter.js";
import { Clarity } from "./clarity.js";
import { answerHead, answerTail, code, parameters } from "./common.js";
import {
  ColourErrorEstimate,
  IlluminanceEstimate,
  LossEstimate,
  LumensEstimate,
  RatioEstimate,
  RelativePercentEstimate,
} from "./estimates.js";
import { colourError, density, depth, share } from "./quantities.js";

export const MixedLightVerdict = z
  .enum(["lamps_only", "lamps_lead", "lights_fight", "daylight_leads", "daylight_only"])
  .describe("Which light makes the picture, or `lights_fight` where two colours of light meet in it.");

export const WayOutKind = z
  .enum(["lamps_off", "lamp_filter", "balance_to_lamps", "balance_to_both", "come_closer"])
  .describe("A way out of two lights of different colour.");

export const LumensVerdict = z
  .enum(["enough", "closer", "stronger", "out_of_reach"])
  .describe(
    "Where the lumens could come from: the scene's video lights have them (`enough`), have them from closer (`closer`), only stronger video lights do (`stronger`), or none that divers carry (`out_of_reach`).",
  );

export const BalanceTo = z
  .enum(["daylight", "lamps", "daylight_and_lamps"])
  .describe(
    "The light to set the white balance to; both where a plan leaves the video lights on among daylight.",
  );

export const MixedLightZone = z
  .object({
    verdict: choice(MixedLightVerdict, {
      description: "Which light makes the picture.",
      example: "lights_fight",
    }),
    min_depth_m: depth("Shallow end of the zone.", 6),
    max_depth_m: depth("Deep end of the zone.", 14),
  })
  .describe("A stretch of the range with one verdict.");

export const TransmittancePoint = z
  .object({
    wavelength_nm: quantity({
      description: "Wavelength of the light, in air.",
      unit: "nm",
      decimals: 1,
      min: 300,
      max: 1000,
      example: 600,
    }),
    transmittance: quantity({
      description: "Share of the light at that wavelength that passes.",
      unit: "1",
      decimals: 4,
      min: 0,
      max: 1,
      example: 0.21,
    }),
  })
  .describe("What the filter should let through at one wavelength.");

const exampleWay = {
  way: "come_closer",
  code: "come_closer",
  text: "Bring the video lights to 0.3 m from the subject, under control, and set the white balance on a card in their light: from there they outshine daylight.",
  parameters: { distance_m: 0.32 },
  split_left_delta_e00: 4.2,
  cost_stops: -2.1,
  lamp_distance_m: 0.32,
} as const;

export const WayOut = z
  .object({
    way: choice(WayOutKind, { description: "What to do.", example: exampleWay.way }),
    code: code(exampleWay.code),
    text: text({ description: "The same in a sentence.", example: exampleWay.text }),
    parameters: parameters({ example: exampleWay.parameters }),
    split_left_delta_e00: colourError(
      "Colour difference between the two lights that then remains (CIEDE2000).",
      2.3,
    ),
    cost_stops: quantity({
      description: "Light on the subject lost by it; negative when it gains light.",
      unit: "stop",
      decimals: 2,
      min: -10000,
      max: 10000,
      example: 1.1,
    }),
    lamp_filter_kind: choice(FilterKind, {
      description: "`lamp_filter`: kind of the filter to put on each video light.",
      example: "blue",
    }).optional(),
    lamp_filter_density: density("`lamp_filter`: its density.", 0.6).optional(),
    lamp_filter_red_transmittance: share(
      "`lamp_filter`: what it lets through in the red channel, relative to its clearest channel.",
      0.21,
    ).optional(),
    lamp_filter_green_transmittance: share("`lamp_filter`: the same in the green channel.", 0.74).optional(),
    lamp_filter_blue_transmittance: share("`lamp_filter`: the same in the blue channel.", 1).optional(),
    lamp_filter_transmittance: list(TransmittancePoint, {
      description: "`lamp_filter`: the same as a curve, to ask a maker for.",
      example: [
        { wavelength_nm: 450, transmittance: 0.9 },
        { wavelength_nm: 650, transmittance: 0.2 },
      ],
    }).optional(),
    lamp_flux_left_lm: quantityList({
      description: "`lamp_filter`: luminous flux left of each of the scene's video lights.",
      unit: "lm",
      decimals: 0,
      min: 0,
      max: 200000,
      example: 2100,
      minItems: 1,
      maxItems: 16,
      examples: [2100],
    }).optional(),
    lamp_distance_m: quantity({
      description: "`come_closer`: distance from the video lights at which they lead.",
      unit: "m",
      decimals: 2,
      min: 0,
      max: 20,
      example: 0.45,
    }).optional(),
  })
  .describe("A way out, and what it costs.");

export const MixedLightAtDepth = z
  .object({
    depth_m: depth("Depth that this part of the answer is for.", 12),
    verdict: choice(MixedLightVerdict, {
      description: "Which light makes the picture.",
      example: "lights_fight",
    }),
    verdict_clarity: choice(Clarity, {
      description: "How clear that is; absent unless both lights are there.",
      example: "clear",
    }).optional(),
    red_lamp_over_daylight_stops: RatioEstimate.describe(
      "Light of the video lights over daylight in the red channel, as both reach the camera from the upright subject; absent unless both are there.",
    ).optional(),
    green_lamp_over_daylight_stops: RatioEstimate.describe(
      "The same in the green channel; absent unless both lights are there.",
    ).optional(),
    blue_lamp_over_daylight_stops: RatioEstimate.describe(
      "The same in the blue channel; absent unless both lights are there.",
    ).optional(),
    lamp_illuminance_lx: IlluminanceEstimate.describe(
      "Illuminance on the upright subject from the video lights.",
    ),
    daylight_illuminance_lx: IlluminanceEstimate.describe(
      "Illuminance on the upright subject from daylight.",
    ),
    split_delta_e00: ColourErrorEstimate.describe(
      "Colour difference between a grey in both lights and one in daylight alone, with the white balance set to daylight; absent unless both are there.",
    ).optional(),
    split_balanced_to_lamps_delta_e00: ColourErrorEstimate.describe(
      "The same for what only daylight lights, with the white balance set to the video lights; absent unless both are there.",
    ).optional(),
    split_balanced_between_delta_e00: ColourErrorEstimate.describe(
      "The same with the white balance half way between; absent unless both are there.",
    ).optional(),
    red_excess_stops: RatioEstimate.describe(
      "How much more red than green the video lights add, with the white balance set to daylight; absent unless both lights are there.",
    ).optional(),
    lamp_red_water_loss_stops: LossEstimate.describe(
      "What the water between video light, subject and camera costs the video lights in the red channel; absent without them.",
    ).optional(),
    lamp_green_water_loss_stops: LossEstimate.describe(
      "The same in the green channel; absent without video lights.",
    ).optional(),
    lamp_blue_water_loss_stops: LossEstimate.describe(
      "The same in the blue channel; absent without video lights.",
    ).optional(),
    lamp_falloff_1_m_behind_stops: quantity({
      description:
        "How much less light the video lights give a metre behind the subject; absent without them.",
      unit: "stop",
      decimals: 2,
      min: 0,
      max: 10000,
      example: 3.1,
    }).optional(),
    lit_haze_percent: RelativePercentEstimate.describe(
      "Luminance of the backscatter between camera and subject, in percent of an 18 % grey subject; 1000000 stands for that and more, where it hides the subject. Absent without video lights.",
    ).optional(),
    lumens_needed_lm: LumensEstimate.describe(
      "With `wanted_lead_stops`: luminous flux of all video lights together, without filters, that leads daylight by that much from `wanted_lead_distance_m`; 1000000000 stands for that and more. Absent without daylight.",
    ).optional(),
    lumens_verdict: choice(LumensVerdict, {
      description: "With `wanted_lead_stops`: where these lumens could come from.",
      example: "stronger",
    }).optional(),
    own_lamps_lead_from_m: quantity({
      description:
        "With `wanted_lead_stops`: largest distance, to 0.05 m, from which the scene's video lights do it; absent where they do not do it even from 0.2 m.",
      unit: "m",
      decimals: 2,
      min: 0.2,
      max: 20,
      example: 0.4,
    }).optional(),
    ways_out: list(WayOut, {
      description: "What to do about it, best first; empty where the lights do not fight.",
      example: [exampleWay],
    }),
  })
  .describe("Video lights against daylight at one depth.");

export const MixedLightAnswer = z
  .object({
    ...answerHead,
    balance_to: choice(BalanceTo, {
      description: "The light to set the white balance to.",
      example: "daylight",
    }),
    zones: list(MixedLightZone, {
      description: "The range as stretches of one verdict, shallow first.",
      example: [{ verdict: "lights_fight", min_depth_m: 6, max_depth_m: 14 }],
    }),
    depths: list(MixedLightAtDepth, {
      description: "Video lights against daylight at depths from shallow to deep.",
      example: [
        {
          depth_m: 12,
          verdict: "lights_fight",
          red_lamp_over_daylight_stops: { low: 0.85, likely: 1.62, high: 2.4 },
          lamp_illuminance_lx: { low: 900, likely: 1300, high: 1900 },
          daylight_illuminance_lx: { low: 2900, likely: 4100, high: 5600 },
          ways_out: [exampleWay],
        },
      ],
    }),
    ...answerTail,
  })
  .describe("Video lights against daylight, and the way out where their colours do not match.");
export type MixedLightAnswer = z.infer<typeof MixedLightAnswer>;

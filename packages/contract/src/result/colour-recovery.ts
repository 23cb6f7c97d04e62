import { z } from "zod/v3";
import { choice, list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { answerHead, answerTail } from "./common.js";
import { DepthEstimate, SignalToNoiseEstimate } from "./estimates.js";
import { depth, fNumber, iso, neutralDensity, share, shutter_s } from "./quantities.js";

export const RecordingKind = z
  .enum(["no_filter", "filter_best_exposure", "filter_same_settings"])
  .describe(
    "Which recording: without a filter at its best exposure, with the scene's filter at its best exposure, or with it at the settings (and the ND filter) of the one without.",
  );

export const RedQuality = z
  .enum(["excellent", "acceptable", "poor", "gone"])
  .describe("How well red light was recorded, by its signal over noise (after ISO 12232).");

function electrons(colour: string, example: number) {
  const description = `Electrons that light frees in the ${colour} channel of a grey.`;
  return quantity({ description, unit: "1", decimals: 1, min: 0, max: 1e12, example });
}

function signalToNoise(colour: string, example: number) {
  const description = `Signal over noise of the ${colour} channel.`;
  return quantity({ description, unit: "1", decimals: 2, min: 0, max: 1e6, example });
}

function codes(bits: number, example: number) {
  const description = `Code values to a stop of red around that grey, at ${bits} bits.`;
  return quantity({ description, unit: "1", decimals: 1, min: 0, max: 1e6, example });
}

export const Recording = z
  .object({
    recording: choice(RecordingKind, { description: "Which recording.", example: "no_filter" }),
    iso: iso("ISO speed that was set."),
    f_number: fNumber("Aperture that was set."),
    shutter_s: shutter_s("Exposure time that was set."),
    neutral_density: neutralDensity(
      "Density of the ND filter in front of the lens, where the scene is too bright for these settings; absent otherwise.",
    ).optional(),
    red_electrons: electrons("red", 820),
    green_electrons: electrons("green", 5200),
    blue_electrons: electrons("blue", 6100),
    red_signal_to_noise: signalToNoise("red", 28.1),
    green_signal_to_noise: signalToNoise("green", 72),
    blue_signal_to_noise: signalToNoise("blue", 78),
    red_above_600_nm_share: share("Share of the red channel's signal that is light above 600 nm.", 0.17),
    red_light_signal_to_noise: SignalToNoiseEstimate.describe(
      "Signal over noise of the light above 600 nm alone.",
    ),
    red_quality: choice(RedQuality, { description: "How well it was recorded.", example: "poor" }),
    red_gain_needed: quantity({
      description:
        "Gain that grading still has to give red after the camera's balance, against the strongest channel; 1000000000000 stands for that and more.",
      unit: "1",
      decimals: 2,
      min: 0,
      max: 1e12,
      example: 1.8,
    }),
    red_codes_per_stop_8_bit: codes(8, 21),
    red_codes_per_stop_10_bit: codes(10, 84),
    red_codes_per_stop_12_bit: codes(12, 336),
  })
  .describe("An 18 % grey as it was recorded, per pixel as looked at.");

const exampleRecording = {
  recording: "no_filter",
  iso: 400,
  f_number: 4,
  shutter_s: 0.02,
  red_electrons: 820,
  green_electrons: 5200,
  blue_electrons: 6100,
  red_signal_to_noise: 28.1,
  green_signal_to_noise: 72,
  blue_signal_to_noise: 78,
  red_above_600_nm_share: 0.17,
  red_light_signal_to_noise: { low: 3.9, likely: 4.8, high: 5.9 },
  red_quality: "poor",
  red_gain_needed: 1.8,
  red_codes_per_stop_8_bit: 21,
  red_codes_per_stop_10_bit: 84,
  red_codes_per_stop_12_bit: 336,
} as const;

export const RecoveryAtDepth = z
  .object({
    depth_m: depth("Depth that this part of the answer is for.", 12),
    recordings: list(Recording, {
      description: "A grey as recorded without a filter and, where the scene has one, with it.",
      example: [exampleRecording],
    }),
  })
  .describe("What grading has to work with at one depth.");

export const ColourRecoveryAnswer = z
  .object({
    ...answerHead,
    depths: list(RecoveryAtDepth, {
      description: "What grading has to work with at depths from shallow to deep.",
      example: [{ depth_m: 12, recordings: [exampleRecording] }],
    }),
    red_acceptable_to_without_filter_depth_m: DepthEstimate.describe(
      "Depth down to which red light above 600 nm is recorded acceptably without a filter; absent without daylight.",
    ).optional(),
    red_gone_from_without_filter_depth_m: DepthEstimate.describe(
      "Depth from which it is gone without a filter; absent without daylight.",
    ).optional(),
    red_acceptable_to_with_filter_depth_m: DepthEstimate.describe(
      "Depth down to which it is recorded acceptably with the scene's filter; absent without one.",
    ).optional(),
    red_gone_from_with_filter_depth_m: DepthEstimate.describe(
      "Depth from which it is gone with the scene's filter; absent without one.",
    ).optional(),
    red_trusted_to_depth_m: quantity({
      description:
        "Depth below which red that the water itself makes outweighs red from the surface at 650 nm; absent without daylight.",
      unit: "m",
      decimals: 1,
      min: 0,
      max: 1000,
      example: 21,
    }).optional(),
    ...answerTail,
  })
  .describe("What grading can still bring back of the colour.");
export type ColourRecoveryAnswer = z.infer<typeof ColourRecoveryAnswer>;

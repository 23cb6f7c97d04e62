import { z } from "zod/v3";
import { choice, flag, list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { transferCurves } from "./values.js";

export const TransferCurve = z
  .enum(transferCurves)
  .describe(
    "How the values of a picture were stored: `linear` (raw), `srgb` (IEC 61966-2-1) or `rec709` (ITU-R BT.709).",
  );

function channel(colour: string, example: number) {
  const description = `Mean of the card in the ${colour} channel as stored, 1 for the brightest possible.`;
  return quantity({ description, unit: "1", min: 0, max: 1, example });
}

function gain(colour: string, example: number) {
  const description = `What the white balance multiplied the ${colour} channel by. All three gains or none.`;
  return quantity({ description, unit: "1", min: 0.01, max: 100, example }).optional();
}

export const CardSample = z
  .object({
    depth_m: quantity({ description: "Depth of the card.", unit: "m", min: 0, max: 60, example: 6 }),
    red: channel("red", 0.11),
    green: channel("green", 0.34),
    blue: channel("blue", 0.4),
    iso: quantity({
      description: "ISO speed of this picture. With `shutter_s` and `f_number`, or none of the three.",
      unit: "1",
      min: 25,
      max: 409600,
      example: 400,
    }).optional(),
    shutter_s: quantity({
      description: "Exposure time of this picture.",
      unit: "s",
      min: 0.00001,
      max: 60,
      example: 0.02,
    }).optional(),
    f_number: quantity({
      description: "Aperture of this picture.",
      unit: "1",
      min: 0.7,
      max: 64,
      example: 5.6,
    }).optional(),
    red_gain: gain("red", 2),
    green_gain: gain("green", 1),
    blue_gain: gain("blue", 1.4),
  })
  .strict()
  .describe("A grey card photographed at one depth, in daylight alone.");

/** The water as a grey card at several depths shows it. */
export const cardFields = {
  card_samples: list(CardSample, {
    description:
      "The water, by pictures of one grey card at 2 to 32 depths, at least 2 m apart in all. With `transfer_curve`. One way to describe the water.",
    minItems: 2,
    maxItems: 32,
    example: [
      { depth_m: 3, red: 0.24, green: 0.36, blue: 0.38 },
      { depth_m: 9, red: 0.03, green: 0.27, blue: 0.31 },
    ],
  }),
  transfer_curve: choice(TransferCurve, {
    description: "How the values of the card were stored. With `card_samples`.",
    example: "srgb",
  }),
  locked_exposure: flag({
    description: "All pictures of the card have the same exposure. With `card_samples`.",
    example: true,
  }),
  locked_balance: flag({
    description: "All pictures of the card are raw, or have the same white balance. With `card_samples`.",
    example: true,
  }),
};

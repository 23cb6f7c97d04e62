import { z } from "zod/v3";
import { choice, flag, list, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { answerHead, answerTail, code, parameters, Statement } from "./common.js";
import { ColourErrorEstimate, GainEstimate } from "./estimates.js";
import { balanceDepths, cct_K, colourError, depth, duv } from "./quantities.js";

export const BalanceMethod = z
  .enum(["card", "card_at_lamp_distance", "kelvin", "auto"])
  .describe(
    "How to set the white balance: on a card in daylight, or on one at the working distance of the video lights; or as `white_balance_mode` says, in kelvin or by the camera.",
  );

const exampleGain = { low: 3.6, likely: 4.1, high: 4.8 };

export const BalanceAtDepth = z
  .object({
    depth_m: depth("Depth that this part of the answer is for.", 12),
    red_gain: GainEstimate.describe(
      "Gain of the red channel that makes a card neutral, the smallest gain being 1.",
    ),
    green_gain: GainEstimate.describe("The same of the green channel."),
    blue_gain: GainEstimate.describe("The same of the blue channel."),
    in_reach: flag({ description: "Whether the camera's balance reaches these gains.", example: false }),
    short_of_reach_stops: quantity({
      description: "How far it falls short between channels; zero where it reaches them.",
      unit: "stop",
      decimals: 2,
      min: 0,
      max: 10000,
      example: 0.4,
    }),
    cast_left_delta_e00: colourError(
      "Colour cast that the white balance leaves on a grey card (CIEDE2000).",
      3.2,
    ),
    card_cast_left_delta_e00: colourError(
      "The same for a white balance on a card; present with another `white_balance_mode`.",
      1.1,
    ).optional(),
    cct_K: cct_K(
      "Correlated colour temperature of the light on the card; absent where it has no meaning.",
    ).optional(),
    duv: duv("Distance of the light on the card from the Planckian locus in CIE 1960 uv, positive above it."),
  })
  .describe("The white balance at one depth.");

const cardLevel = (what: string, example: number) =>
  quantity({
    description: `Where ${what} lies on a histogram or zebras, of full codes, by the recording curve; absent for \`log\`, where makers differ.`,
    unit: "%",
    decimals: 1,
    min: 0,
    max: 100,
    example,
  });

export const StandIn = z
  .enum(["white_slate", "pale_sand", "grey_glove", "hand"])
  .describe("What to set a white balance on without a card.");

const exampleNote = {
  code: "card_level",
  text: "Expose so that a white card lies at about 95 % on the histogram or zebras.",
  parameters: { white_percent: 94.9, grey_percent: 40.9 },
} as const;

export const CardNote = z
  .object({
    code: code(exampleNote.code),
    text: text({ description: "The note in a sentence or two.", example: exampleNote.text }),
    parameters: parameters({ example: exampleNote.parameters }),
  })
  .describe("A note on the card for the white balance.");

export const BalanceOnStandIn = z
  .object({
    stand_in: choice(StandIn, { description: "What to set it on.", example: "white_slate" }),
    cast_left_delta_e00: colourError(
      "Colour cast that it leaves on a grey card where you set the first white balance (CIEDE2000).",
      1.2,
    ),
    least_cast_delta_e00: colourError(
      "`hand`: the least of people around the 10th, 50th and 90th percentile of brightness.",
      9,
    ).optional(),
    most_cast_delta_e00: colourError("`hand`: the most of them.", 14).optional(),
  })
  .describe("A white balance on something other than a card.");

export const WhiteBalanceAnswer = z
  .object({
    ...answerHead,
    method: choice(BalanceMethod, { description: "How to set the white balance.", example: "card" }),
    balance_depths_descending_m: balanceDepths("down", [5, 8.2, 13.5]),
    balance_depths_ascending_m: balanceDepths("up", [18, 11.2, 7]),
    balance_tolerance_delta_e00: colourError(
      "Colour shift allowed between two white balances (CIEDE2000; the model's own is a judgement).",
      8,
    ),
    lamp_kelvin_setting_K: cct_K(
      "For video lights: their own colour temperature, to set without a card; absent otherwise.",
    ).optional(),
    lamp_kelvin_leaves_delta_e00: ColourErrorEstimate.describe(
      "Colour cast that this Kelvin preset leaves on a grey card (CIEDE2000); absent with it.",
    ).optional(),
    stand_ins: list(BalanceOnStandIn, {
      description:
        "Without a card, what to set the white balance on, the least colour cast first; absent where you set it on nothing.",
      example: [{ stand_in: "white_slate", cast_left_delta_e00: 1.2 }],
    }).optional(),
    white_card_level_percent: cardLevel("a white card (90 % of a perfect white)", 94.9).optional(),
    grey_card_level_percent: cardLevel("a grey card of 18 %", 40.9).optional(),
    depths: list(BalanceAtDepth, {
      description: "The white balance at depths from shallow to deep.",
      example: [
        {
          depth_m: 12,
          red_gain: exampleGain,
          green_gain: { low: 1, likely: 1, high: 1.1 },
          blue_gain: { low: 1, likely: 1.1, high: 1.3 },
          in_reach: false,
          short_of_reach_stops: 0.4,
          cast_left_delta_e00: 3.2,
          duv: 0.062,
        },
      ],
    }),
    procedure: list(
      text({ description: "A step, ready to read out.", example: "White-balance on the card at 5 m." }),
      {
        description: "What to do, in order.",
        example: ["White-balance on the card at 5 m.", "White-balance again at 8 m."],
      },
    ),
    procedure_steps: list(Statement, {
      description: "The same, each step as its code and what its text is made of.",
      example: [{ code: "going_down", parameters: { depths_m: [5, 8.2, 13.5] } }],
    }),
    card_notes: list(CardNote, {
      description:
        "Notes on the card: what stands in for it, where it lies on a histogram, and what to do with it in the edit where the camera falls short; empty where you use no card.",
      example: [exampleNote],
    }),
    ...answerTail,
  })
  .describe("How to set a white balance, whether the camera can, and at which depths to set it again.");
export type WhiteBalanceAnswer = z.infer<typeof WhiteBalanceAnswer>;

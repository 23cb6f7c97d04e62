import { z } from "zod/v3";
import { choice, flag, list, text } from "../field/choice.js";
import { quantityList } from "../field/quantity.js";
import { Finish } from "../scene/camera.js";
import { filterKinds } from "../scene/values.js";
import { Clarity } from "./clarity.js";
import { answerHead, answerTail } from "./common.js";
import { ColourErrorDifferenceEstimate, ColourErrorEstimate, LossEstimate } from "./estimates.js";
import { colourError, density, depth, neutralDensity, share } from "./quantities.js";

export const FilterVerdict = z
  .enum(["none", ...filterKinds])
  .describe("A filter to mount, by its kind, or `none`.");

function filterId(description: string) {
  return text({ description, example: "red-55" });
}

export const RunnerUp = z
  .object({
    filter_kind: choice(FilterVerdict, { description: "The second best choice.", example: "magenta" }),
    filter_density: density("Its density; absent for `none` and for a measured filter.", 0.4).optional(),
    filter_id: filterId("Its `id`, where it comes from the scene's `kit`.").optional(),
    colour_error_delta_e00: ColourErrorEstimate.describe("Its mean colour error over the range (CIEDE2000)."),
    loses_by_delta_e00: ColourErrorDifferenceEstimate.describe(
      "Its colour error minus that of the advised choice (CIEDE2000).",
    ),
    probability_better: share("Probability that it is the better choice.", 0.18),
  })
  .describe("The second best choice, and by how much it loses.");

export const OtherFinish = z
  .object({
    finish: choice(Finish, { description: "The finish that this is about.", example: "matched" }),
    filter_kind: choice(FilterVerdict, {
      description: "Which of the three is best under it.",
      example: "none",
    }),
    filter_density: density("Its density; absent for `none`.", 0.4).optional(),
    filter_id: filterId("Its `id`, where it comes from the scene's `kit`.").optional(),
    advised_colour_error_delta_e00: colourError("Colour error of the advised choice under it.", 2.6),
    runner_up_colour_error_delta_e00: colourError("The same of the runner-up.", 2.9),
    without_colour_error_delta_e00: colourError("The same without a filter.", 2.4),
  })
  .describe("How the advised choice, the runner-up and no filter do under another finish.");

export const RankedFilter = z
  .object({
    filter_kind: choice(FilterVerdict, { description: "A filter of the `kit`, or `none`.", example: "red" }),
    filter_density: density("Its density; absent for `none` and for a measured filter.", 0.6).optional(),
    filter_id: filterId("Its `id`; absent for `none`.").optional(),
    colour_error_delta_e00: ColourErrorEstimate.describe("Its mean colour error over the range (CIEDE2000)."),
    probability_best: share(
      "Probability that nothing else of the ranking is better: that its colour error, with what a filter must gain to be worth mounting, is the least. They add up to 1.",
      0.71,
    ),
    filter_loss_stops: LossEstimate.describe("What it costs in exposure; zero for `none`."),
    serves_min_depth_m: depth(
      "Shallow end of the part of the range in which it does better than no filter (or `none` no worse than any filter); absent if nowhere.",
      6,
    ).optional(),
    serves_max_depth_m: depth("Deep end of that part; absent if nowhere.", 18).optional(),
  })
  .describe("One of what is owned, and how well it would do.");

export const FilterAtDepth = z
  .object({
    depth_m: depth("Depth that this part of the answer is for.", 12),
    best_filter_kind: choice(FilterVerdict, {
      description: "The best choice at this depth alone.",
      example: "red",
    }),
    best_filter_density: density("Its density; absent for `none` and for a measured filter.", 0.6).optional(),
    best_colour_error_delta_e00: colourError(
      "Colour error with it (CIEDE2000, mean of a 24-patch chart).",
      8.1,
    ),
    advised_colour_error_delta_e00: colourError("Colour error with the advised choice.", 8.4),
    without_colour_error_delta_e00: colourError("Colour error without a filter.", 11.9),
    advised_red_signal_above_600_nm_share: share(
      "With the advised choice: share of the red channel's signal that comes from light above 600 nm.",
      0.38,
    ),
    without_red_signal_above_600_nm_share: share("The same without a filter.", 0.17),
    advised_balance_in_reach: flag({
      description: "Whether the camera can set a white balance here with the advised choice.",
      example: true,
    }),
    without_balance_in_reach: flag({
      description: "Whether the camera can set a white balance here without a filter.",
      example: false,
    }),
  })
  .describe("What a filter does at one depth.");

export const FilterChoiceAnswer = z
  .object({
    ...answerHead,
    filter_kind: choice(FilterVerdict, {
      description: "What to mount on the lens for the whole range.",
      example: "red",
    }),
    filter_density: density(
      "Its peak optical density; absent for `none` and for a measured filter.",
      0.6,
    ).optional(),
    as_good_from_density: density(
      "Lowest density of that kind whose colours are hardly off the best (within 0.5 CIEDE2000, half of what a filter must gain, or 0.1 for `matched`; judgements). It is the one advised, since it costs the least light. Absent for `none` and for filters of a `kit`.",
      0.6,
    ).optional(),
    as_good_to_density: density("Highest of these densities.", 0.9).optional(),
    filter_id: filterId("The `id` of the filter, where it comes from the scene's `kit`.").optional(),
    neutral_density: neutralDensity(
      "Density of an ND filter to mount with it, so that the shallow end is exposed right: a grey card, with `finish` `matched` a white card that just does not clip; absent where the camera's limits are enough. `exposure-loss`, by ISO 2720, holds back about half a stop more than a white card needs.",
    ).optional(),
    finish: choice(Finish, {
      description: "The finish that every colour error here is judged after.",
      example: "in_camera",
    }),
    other_finishes: list(OtherFinish, {
      description: "Whether another finish would change the choice. Nominal figures.",
      example: [
        {
          finish: "matched",
          filter_kind: "none",
          advised_colour_error_delta_e00: 2.6,
          runner_up_colour_error_delta_e00: 2.9,
          without_colour_error_delta_e00: 2.4,
        },
      ],
    }),
    ranking: list(RankedFilter, {
      description:
        "Everything to choose from, `none` included, the advised choice first and then by colour error, with what a filter must gain to be worth mounting; absent without a `kit`. Of the advised choice and the runner-up the error is worked out at all depths, of the others its spread at both ends of the range and in the middle.",
      example: [
        {
          filter_kind: "red",
          filter_density: 0.6,
          filter_id: "red-55",
          colour_error_delta_e00: { low: 7.4, likely: 8.4, high: 9.7 },
          probability_best: 0.71,
          filter_loss_stops: { low: 1.1, likely: 1.3, high: 1.5 },
          serves_min_depth_m: 6,
          serves_max_depth_m: 18,
        },
      ],
    }).optional(),
    verdict: choice(Clarity, { description: "How clear the choice is.", example: "clear" }),
    colour_error_delta_e00: ColourErrorEstimate.describe(
      "Mean colour error of a 24-patch chart over the range with the advised choice (CIEDE2000).",
    ),
    colour_error_without_delta_e00: ColourErrorEstimate.describe("The same without a filter."),
    runner_up: RunnerUp.describe("The second best choice, and by how much it loses."),
    filter_loss_stops: LossEstimate.describe(
      "What the advised filter costs in exposure; zero when the advice is `none`.",
    ),
    serves_min_depth_m: depth(
      "Shallow end of the part of the range in which the advised filter does better than none (or, for `none`, no worse than any filter); absent if nowhere.",
      6,
    ).optional(),
    serves_max_depth_m: depth("Deep end of that part; absent if nowhere.", 18).optional(),
    change_depths_m: quantityList({
      description:
        "Depths at which to mount it, or take it off, where `filter_change_underwater` allows it; absent otherwise.",
      unit: "m",
      decimals: 2,
      min: 0.1,
      max: 100,
      example: 6,
      minItems: 0,
      maxItems: 100,
      examples: [6],
    }).optional(),
    depths: list(FilterAtDepth, {
      description: "What a filter does at depths from shallow to deep.",
      example: [
        {
          depth_m: 12,
          best_filter_kind: "red",
          best_filter_density: 0.6,
          best_colour_error_delta_e00: 8.1,
          advised_colour_error_delta_e00: 8.4,
          without_colour_error_delta_e00: 11.9,
          advised_red_signal_above_600_nm_share: 0.38,
          without_red_signal_above_600_nm_share: 0.17,
          advised_balance_in_reach: true,
          without_balance_in_reach: false,
        },
      ],
    }),
    ...answerTail,
  })
  .describe("Which filter to mount on the lens, how dense, and how sure that is.");
export type FilterChoiceAnswer = z.infer<typeof FilterChoiceAnswer>;

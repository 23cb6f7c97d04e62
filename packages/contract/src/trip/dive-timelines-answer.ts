import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, flag, list, text } from "../field/choice.js";
import { estimate } from "../field/estimate.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { adviceTail, Reason } from "../result/common.js";
import { ColourErrorEstimate, ExposureValueEstimate, PercentEstimate } from "../result/estimates.js";
import { FilterVerdict } from "../result/filter-choice.js";
import { balanceDepths, colourError, density, depth, fNumber, iso, shutter_s } from "../result/quantities.js";
import {
  clipBalances,
  longestDive_s,
  markedThings,
  markVerdicts,
  momentActions,
  mostCardFrames,
  mostDiveClips,
  mostMoments,
  timelineBases,
} from "./values.js";

export const MomentAction = z
  .enum(momentActions)
  .describe(
    "What is to be done: set a white balance on the card, put the filter on or take it off, or set the `exposure` again, as what is metered has moved by a stop.",
  );

export const ClipBalance = z
  .enum(clipBalances)
  .describe(
    "Whether the last white balance still holds over a clip: `held` or `lost` with nine chances in ten or more, `close` where it may be either, `not_set` where none was made before it.",
  );

export const TimelineBasis = z
  .enum(timelineBases)
  .describe("Whether what was done is known from your `events`, or taken from the `plan` for the dive.");

const inDive = (description: string, example: number) =>
  quantity({ description, unit: "s", decimals: 1, min: 0, max: longestDive_s, example });
const clock = (description: string, example: string) => text({ description, example });

const settings = {
  iso: iso("ISO to set, exactly: on a dial, the nearest third of a stop."),
  f_number: fNumber("f-number to set, exactly: on a dial, the nearest third of a stop."),
  shutter_s: shutter_s("Exposure time."),
  off_by_stops: quantity({
    description:
      "How far these settings are off: above 0 too bright at the least sensitive ones, below 0 too dark at the most sensitive ones.",
    unit: "stop",
    decimals: 2,
    min: -200,
    max: 200,
    example: 0,
  }),
};

const exampleMoment = {
  code: "moment_balance_again",
  text: "Set a white balance here: since the last one grey has shifted by 8.3, and 8 is let pass.",
  basis: "computed" as const,
  figures: [{ name: "shift_delta_e00", value: 8.3 }],
  parameters: { shift_delta_e00: 8.3, tolerance_delta_e00: 8 },
};
const exampleClip = {
  code: "clip_balance_held",
  text: "The last balance holds: grey shifts by 2.1, and 8 is let pass.",
  basis: "computed" as const,
  figures: [{ name: "shift_delta_e00", value: 2.1 }],
  parameters: { shift_delta_e00: 2.1, tolerance_delta_e00: 8 },
};

const momentFields = {
  time_s: inDive("Time since the dive began.", 180),
  dive_clock: clock("The same by the dive's clock.", "09:33:00"),
  camera_clock: clock("And by the camera's.", "09:34:15"),
  depth_m: depth("Depth then.", 16),
  action: choice(MomentAction, { description: "What is to be done, or was done.", example: "balance" }),
  exposure_value_ev100: ExposureValueEstimate.describe(
    "Exposure value at ISO 100 that the camera meters on the subject from then on.",
  ),
  ...settings,
  cast_before_delta_e00: ColourErrorEstimate.describe(
    "For a balance: cast on grey with the balance before it (CIEDE2000); absent where there was none.",
  ),
  cast_after_delta_e00: ColourErrorEstimate.describe(
    "For a balance: cast on grey that it leaves, as far as the camera reaches.",
  ),
  reason: annotate(Reason.describe("Why."), { examples: [exampleMoment] }),
};

export const TimelineMoment = z
  .object(withOptional(momentFields, ["cast_before_delta_e00", "cast_after_delta_e00"]))
  .describe("A moment of the dive at which the camera is to be set, or was set.");

const clipFields = {
  id: text({ description: "Your name for it.", example: "A004" }),
  from_s: inDive("When it begins, since the dive began.", 597),
  to_s: inDive("When it ends.", 645),
  from_clock: clock("When it begins, by the camera's clock.", "09:41:12"),
  to_clock: clock("When it ends, by the camera's clock.", "09:42:00"),
  min_depth_m: depth("Its shallowest moment.", 14.6),
  max_depth_m: depth("Its deepest moment.", 15.1),
  through_filter: flag({ description: "The filter is on the lens.", example: true }),
  exposure_value_ev100: ExposureValueEstimate.describe(
    "Exposure value at ISO 100 that the camera meters on the subject, as the mean over the clip.",
  ),
  exposure_span_stops: quantity({
    description: "From its darkest moment to its brightest.",
    unit: "stop",
    decimals: 2,
    min: 0,
    max: 200,
    example: 0.12,
  }),
  ...settings,
  red_left_percent: PercentEstimate.describe(
    "Red that is left, of what is just below the surface, as the camera's red channel sees it: the mean over the clip.",
  ),
  balance: choice(ClipBalance, { description: "How the last balance stands.", example: "held" }),
  cast_delta_e00: ColourErrorEstimate.describe(
    "Cast on grey with the last balance, at the moment when a new one would gain most (CIEDE2000).",
  ),
  cast_if_balanced_delta_e00: ColourErrorEstimate.describe(
    "Cast on grey that a balance made at that moment would leave, as far as the camera reaches.",
  ),
  reason: annotate(Reason.describe("How the balance stands, and why."), { examples: [exampleClip] }),
};

export const TimelineClip = z
  .object(withOptional(clipFields, ["id", "cast_delta_e00"]))
  .describe("A clip with its light and how its balance stands.");

export const MarkedThing = z
  .enum(markedThings)
  .describe(
    "What is marked: the `exposure` of a card (EV at ISO 100), how far the white balance fell short on it (`balance_reach`, stops between channels), how fast light of a channel fades (1/m), or the density of the filter.",
  );

export const MarkVerdict = z
  .enum(markVerdicts)
  .describe(
    "Whether what was measured `agrees` with what was predicted, within both their spreads, or is `more` or `less`.",
  );

/** Of whatever is marked: the unit is that of what is marked. */
const markEstimate = (what: string, example: readonly [number, number, number]) =>
  estimate({
    what: `${what}, in the unit of what is marked`,
    unit: "1",
    decimals: 4,
    min: -10000,
    max: 10000,
    example,
  });

const exampleMark = {
  code: "mark_filter_differs",
  text: "The filter measures 0.74 (0.69 to 0.80), not 0.9: next time plan with 0.74.",
  basis: "computed" as const,
  figures: [{ name: "measured", value: 0.74 }],
  parameters: { measured: 0.74, low: 0.69, high: 0.8, nominal: 0.9 },
};

export const MarkPrediction = markEstimate("What was predicted", [0.9, 0.9, 0.9]);
export const MarkMeasurement = markEstimate("What the cards show", [0.69, 0.74, 0.8]);

const markFields = {
  marks: choice(MarkedThing, { description: "What is marked.", example: "filter_density" }),
  frame: quantity({
    description: "Which of the `card_frames`, counted from 0, where it is about one of them.",
    unit: "1",
    decimals: 0,
    min: 0,
    max: mostCardFrames,
    integer: true,
    example: 0,
  }),
  depth_m: depth("Depth of that frame.", 12),
  predicted: MarkPrediction.describe("What was predicted: the unit is that of what is marked."),
  measured: MarkMeasurement.describe("What the cards show, in the same unit."),
  used_ev100: quantity({
    description: "For an exposure: the exposure value at ISO 100 that the camera was set to.",
    unit: "EV",
    decimals: 2,
    min: -200,
    max: 60,
    example: 11.4,
  }),
  verdict: choice(MarkVerdict, { description: "How the two go together.", example: "less" }),
  reason: annotate(Reason.describe("The same in words, and what to do next time."), {
    examples: [exampleMark],
  }),
};

export const TimelineMark = z
  .object(withOptional(markFields, ["frame", "depth_m", "used_ev100"]))
  .describe("A prediction marked by the cards of the dive.");

const fields = {
  site: annotate(
    z.object({}).describe("The site that was answered, with the filmed depths and every default filled in."),
    { examples: [{ water_type: "IB", min_depth_m: 5, max_depth_m: 18 }] },
  ),
  length_s: inDive("From the first sample to the last.", 2700),
  done_by: choice(TimelineBasis, { description: "Where it is known what was done.", example: "plan" }),
  filter_kind: choice(FilterVerdict, {
    description: "The filter that the plan for this dive mounts.",
    example: "red",
  }),
  filter_density: density("Its density; absent for `none` and for a measured filter.", 1.1),
  filter_id: text({ description: "Its `id`, where it comes from the site's `kit`.", example: "red-55" }),
  balance_depths_descending_m: balanceDepths("down", [5, 11]),
  balance_depths_ascending_m: balanceDepths("up", [9]),
  balance_tolerance_delta_e00: colourError("Shift of grey since the last balance that is let pass.", 8),
  moments: list(TimelineMoment, {
    description:
      "What was to be done, or what was done where `events` said it, in order, with new exposures where what is metered has moved by a stop.",
    example: [],
    maxItems: mostMoments,
  }),
  clips: list(TimelineClip, {
    description: "Your clips, in the order in which they were filmed.",
    example: [],
    maxItems: mostDiveClips,
  }),
  marks: list(TimelineMark, {
    description: "The plan marked against the dive; present where there are `card_frames`.",
    example: [],
    maxItems: 2 * mostCardFrames + 4,
  }),
  ...adviceTail,
};

export const DiveTimelinesAnswer = z
  .object(withOptional(fields, ["filter_density", "filter_id", "marks"]))
  .describe("A dive as it was dived: where to have set the camera, and how each clip stands.");
export type DiveTimelinesAnswer = z.infer<typeof DiveTimelinesAnswer>;

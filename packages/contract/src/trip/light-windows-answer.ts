import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, flag, list, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { adviceTail, Reason } from "../result/common.js";
import { ColourErrorEstimate, IlluminanceEstimate, PercentEstimate } from "../result/estimates.js";
import { FilterVerdict } from "../result/filter-choice.js";
import { colourError, density, fNumber, iso, shutter_s } from "../result/quantities.js";
import { WindowAim } from "./light-windows-request.js";
import { cloudBases, mostListedWindows, mostWindowDays } from "./values.js";

export const CloudBasis = z
  .enum(cloudBases)
  .describe(
    "Where the cloud of a window comes from: your forecast for its hours (`hour`) or its `day`; or the sky is `assumed_clear`, for some of it at least.",
  );

const localTime = (description: string, example: string) => text({ description, example });
const count = (description: string, example: number) =>
  quantity({ description, unit: "1", decimals: 0, min: 0, max: 48, integer: true, example });

const exampleReason = {
  code: "window_best",
  text: "The best of the day: the sun stands at 64 degrees, with 2 eighths of cloud.",
  basis: "computed" as const,
  figures: [{ name: "elevation_deg", value: 64 }],
  parameters: { elevation_deg: 64, cloud_oktas: 2 },
};

const windowFields = {
  from_local_time: localTime("When it begins, by the clocks of the site.", "2027-01-16T11:00"),
  to_local_time: localTime("When it ends, by the clocks of the site.", "2027-01-16T12:00"),
  from_time: localTime("When it begins, in UTC (RFC 3339).", "2027-01-16T20:00:00Z"),
  sun_elevation_deg: quantity({
    description: "Height of the sun, as the mean over the window. So are the other figures of it.",
    unit: "deg",
    decimals: 1,
    min: 0,
    max: 90,
    example: 62.4,
  }),
  cloud_oktas: quantity({
    description: "Eighths of the sky covered by cloud.",
    unit: "okta",
    decimals: 1,
    min: 0,
    max: 8,
    example: 2,
  }),
  cloud_basis: choice(CloudBasis, { description: "Where that comes from.", example: "hour" }),
  illuminance_lx: IlluminanceEstimate.describe("Light that comes down at the middle of the filmed depths."),
  red_left_percent: PercentEstimate.describe(
    "Red that is left there, of what is just below the surface, as the camera's red channel sees it.",
  ),
  colour_error_delta_e00: ColourErrorEstimate.describe(
    "The least colour error that a filter, or none, leaves (CIEDE2000), as the mean over both ends and the middle of the depths. Its spread, and that of light and red, is that of the best window of all days, carried over.",
  ),
  light_stops_over_best: quantity({
    description:
      "Light that the aim wants, over that in the best window of all days: what comes down on the subject, that of the open water behind it, or your video lights over daylight.",
    unit: "stop",
    decimals: 2,
    min: -200,
    max: 200,
    example: -0.21,
  }),
  costs_more_percent: quantity({
    description:
      "By how much the figure that windows are ranked by, colour error / 2 ^ (weight x light), is above that of the day's first window.",
    unit: "%",
    decimals: 1,
    min: 0,
    max: 1e12,
    example: 1.4,
  }),
  as_good: flag({
    description: "Nobody can tell it from the day's first window: it costs at most 2 % more.",
    example: true,
  }),
  filter_kind: choice(FilterVerdict, {
    description: "The filter that leaves the least colour error.",
    example: "red",
  }),
  filter_density: density("Its density; absent for `none` and for a measured filter.", 1.1),
  filter_id: text({ description: "Its `id`, where it comes from the site's `kit`.", example: "red-55" }),
  filter_gains_delta_e00: colourError(
    "Colour error that it leaves less than no filter; below about 1 it is hardly worth the mounting.",
    3.4,
  ),
  exposure_value_ev100: quantity({
    description:
      "Exposure value at ISO 100 that the camera meters at the middle of the depths, behind the filter.",
    unit: "EV",
    decimals: 2,
    min: -200,
    max: 40,
    example: 8.3,
  }),
  iso: iso("ISO to set there, exactly: on a dial, the nearest third of a stop."),
  f_number: fNumber("f-number to set there."),
  shutter_s: shutter_s("Exposure time there."),
  off_by_stops: quantity({
    description:
      "How far these settings are off: above 0 too bright at the least sensitive ones, which a neutral-density filter takes, below 0 too dark at the most sensitive ones.",
    unit: "stop",
    decimals: 2,
    min: -200,
    max: 200,
    example: 0,
  }),
  reason: annotate(Reason.describe("Why it stands where it does."), { examples: [exampleReason] }),
};

export const LightWindow = z
  .object(withOptional(windowFields, ["filter_density", "filter_id"]))
  .describe("A window of a day, with what to mount and to set in it.");

export const LightWindowDay = z
  .object({
    date: localTime("The day, by the clocks of the site.", "2027-01-16"),
    windows: list(LightWindow, {
      description: `Its windows, the best first, up to ${mostListedWindows}. Empty where the sun stands high enough in none.`,
      example: [],
      maxItems: mostListedWindows,
    }),
    windows_behind: count(
      "Windows that are not listed: none of them is better on both colour error and light than one that is.",
      6,
    ),
    windows_without_sun: count(
      "Windows left out, as the sun does not stand at 10 degrees or higher all the time.",
      0,
    ),
  })
  .describe("A day with its windows of light.");

export const BestWindow = z
  .object({
    date: localTime("Its day.", "2027-01-16"),
    from_local_time: localTime("When it begins, by the clocks of the site.", "2027-01-16T11:00"),
  })
  .describe("The best window of all days.");

export const LightWindowsAnswer = z
  .object({
    site: annotate(z.object({}).describe("The site that was answered, with every default filled in."), {
      examples: [{ water_type: "IB", min_depth_m: 5, max_depth_m: 18 }],
    }),
    aim: choice(WindowAim, { description: "What light was looked for.", example: "natural_colour" }),
    weight_per_stop: quantity({
      description: "Weight of a stop of light in the figure that windows are ranked by.",
      unit: "1",
      decimals: 3,
      min: 0,
      max: 1,
      example: 0.167,
    }),
    best: BestWindow.describe("The best window of all days: its day, and what it is measured by."),
    days: list(LightWindowDay, {
      description: "Each day, in order.",
      example: [],
      maxItems: mostWindowDays,
    }),
    ...adviceTail,
  })
  .describe("When the light of a site is best, day by day.");
export type LightWindowsAnswer = z.infer<typeof LightWindowsAnswer>;

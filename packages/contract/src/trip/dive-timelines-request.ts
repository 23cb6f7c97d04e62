import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, flag, list, text } from "../field/choice.js";
import { withOptional, withOptionalBut } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { everySceneFields } from "../scene/every-scene.js";
import { textsAskedFields } from "../scene/texts-asked.js";
import {
  lensEvents,
  longestDive_s,
  longestUddf,
  mostCardFrames,
  mostDiveClips,
  mostDiveEvents,
  mostDiveSamples,
} from "./values.js";

/** A time of day to the millisecond. */
const clockPattern = /^([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,3})?$/;

const timeInDive = (description: string, example: number) =>
  quantity({ description, unit: "s", min: 0, max: longestDive_s, example });

export const DiveSample = z
  .object({
    time_s: timeInDive("Time since the dive began, later than that of the sample before.", 240),
    depth_m: quantity({ description: "Depth then.", unit: "m", min: 0, max: 100, example: 12.4 }),
  })
  .strict()
  .describe("A depth of the dive at its time.");

export const LensEvent = z
  .enum(lensEvents)
  .describe(
    "What was done: the white balance was set on the card (`balance`), or the filter was put on the lens or taken off it.",
  );

export const DiveEvent = z
  .object({
    time_s: timeInDive("Time since the dive began.", 250),
    event: choice(LensEvent, { description: "What was done.", example: "balance" }),
  })
  .strict()
  .describe("Something that was done on the dive.");

export const DiveClip = z
  .object(
    withOptional(
      {
        id: text({ description: "Your own name for it; answers use it.", example: "A004", maxLength: 64 }),
        from_clock: text({
          description: "When it begins, by the camera's clock, as hh:mm:ss, to the millisecond if you like.",
          example: "09:41:12",
          pattern: clockPattern,
        }),
        length_s: quantity({
          description: "How long it runs. It lies within the dive, and no two clips overlap.",
          unit: "s",
          min: 0.1,
          max: longestDive_s,
          example: 48,
        }),
      },
      ["id"],
    ),
  )
  .strict()
  .describe("What was filmed in one go.");

const channel = (colour: string, example: number) =>
  quantity({
    description: `Mean of the card in the ${colour} channel, linear, after the white balance; 1 for the brightest possible.`,
    unit: "1",
    min: 0.0001,
    max: 0.99,
    example,
  });
const gain = (colour: string, example: number) =>
  quantity({
    description: `What the white balance multiplied the ${colour} channel by.`,
    unit: "1",
    min: 0.01,
    max: 100,
    example,
  });

export const CardFrame = z
  .object(
    withOptional(
      {
        time_s: timeInDive("Time since the dive began; or `depth_m`.", 420),
        depth_m: quantity({
          description: "Depth of the card; or `time_s`.",
          unit: "m",
          min: 0.1,
          max: 60,
          example: 12,
        }),
        red: channel("red", 0.21),
        green: channel("green", 0.22),
        blue: channel("blue", 0.2),
        iso: quantity({ description: "ISO speed.", unit: "1", min: 25, max: 409600, example: 400 }),
        shutter_s: quantity({
          description: "Exposure time.",
          unit: "s",
          min: 0.00001,
          max: 60,
          example: 0.02,
        }),
        f_number: quantity({ description: "Aperture.", unit: "1", min: 0.7, max: 64, example: 5.6 }),
        red_gain: gain("red", 3.1),
        green_gain: gain("green", 1),
        blue_gain: gain("blue", 1.2),
        through_filter: flag({
          description: "Filmed through the filter of the site.",
          example: false,
          default: false,
        }),
        balanced: flag({
          description:
            "The white balance had just been set on this card: the colour cast on it is what the camera cannot reach.",
          example: true,
          default: false,
        }),
      },
      ["time_s", "depth_m", "through_filter", "balanced"],
    ),
  )
  .strict()
  .describe("An 18 % grey card filmed on the dive in daylight alone, across the line of sight.");

const exampleSamples = [
  { time_s: 0, depth_m: 0 },
  { time_s: 180, depth_m: 16 },
  { time_s: 1500, depth_m: 12 },
  { time_s: 2400, depth_m: 5 },
  { time_s: 2700, depth_m: 0 },
];

const exampleUddf = `<uddf version="3.2.1" xmlns="http://www.streit.cc/uddf/3.2/"><generator><name>own log</name></generator><profiledata><repetitiongroup id="g"><dive id="dive_1"><informationbeforedive><datetime>2027-01-16T09:30:00</datetime></informationbeforedive><samples><waypoint><depth>0.0</depth><divetime>0</divetime></waypoint><waypoint><depth>16.2</depth><divetime>180</divetime></waypoint><waypoint><depth>5.0</depth><divetime>2400</divetime></waypoint></samples></dive></repetitiongroup></profiledata></uddf>`;

const fields = {
  site: annotate(
    z
      .object({})
      .describe(
        "The site, its light and the camera: a scene as `dive-advice` takes it, without depths, which are those of the dive. Its time, where it has one, is when the dive began: the sun moves on from there. A filter in it is the one that was on the lens.",
      ),
    { examples: [{ visibility_m: 25, water_hue: "blue", sun_elevation_deg: 50 }] },
  ),
  samples: list(DiveSample, {
    description: `The dive as its depth over time, in order, 2 to ${mostDiveSamples} samples. Between them the depth is drawn straight. Above 0.1 m the light is that of 0.1 m.`,
    example: exampleSamples,
    minItems: 2,
    maxItems: mostDiveSamples,
  }),
  uddf: text({
    description: `The dive as a file in UDDF 3.2, the open exchange format of dive logs, in place of \`samples\`: its text, up to ${longestUddf} characters and ${mostDiveSamples} waypoints. Of it the waypoints (\`divetime\`, \`depth\`) and the \`datetime\` of the dive are read, and nothing else. A document type declaration is refused.`,
    example: exampleUddf,
    maxLength: longestUddf,
  }),
  uddf_dive: text({
    description: "`id` of the dive in the file, where it has more than one.",
    example: "dive_1",
    maxLength: 64,
  }),
  start_clock: text({
    description:
      "Time of day at which the dive began (`time_s` 0), by the dive's clock: that of your dive computer. Left out, it is that of the file's `datetime`, and without one clocks count from the start of the dive.",
    example: "09:30:00",
    pattern: clockPattern,
  }),
  clock_offset_s: quantity({
    description: "How far the camera's clock is ahead of the dive's; below 0 where it is behind.",
    unit: "s",
    min: -86_400,
    max: 86_400,
    example: 75,
    default: 0,
  }),
  clips: list(DiveClip, {
    description: `What was filmed, up to ${mostDiveClips} clips. The advice is for their depths. Without clips it is for all of the dive from 2 m down.`,
    example: [{ id: "A004", from_clock: "09:41:12", length_s: 48 }],
    maxItems: mostDiveClips,
  }),
  events: list(DiveEvent, {
    description: `Balances and changes of filter as they were made, up to ${mostDiveEvents}. Left out, nothing is known of them, and the answer tells where they should have been. Changes of filter need a filter in the site.`,
    example: [
      { time_s: 180, event: "balance" as const },
      { time_s: 1500, event: "balance" as const },
    ],
    maxItems: mostDiveEvents,
  }),
  card_frames: list(CardFrame, {
    description: `Grey cards from the dive, 2 to ${mostCardFrames}, all at one distance and all with daylight alone: the plan is marked by them. Two at least without the filter, and 2 m apart in depth, so that the water can be fitted.`,
    example: [
      {
        depth_m: 4,
        red: 0.2,
        green: 0.22,
        blue: 0.21,
        iso: 100,
        shutter_s: 0.02,
        f_number: 8,
        red_gain: 1.9,
        green_gain: 1,
        blue_gain: 1.1,
      },
      {
        depth_m: 12,
        red: 0.2,
        green: 0.22,
        blue: 0.21,
        iso: 400,
        shutter_s: 0.02,
        f_number: 5.6,
        red_gain: 4.8,
        green_gain: 1,
        blue_gain: 1,
      },
    ],
    minItems: 2,
    maxItems: mostCardFrames,
  }),
  ...textsAskedFields,
  ...everySceneFields,
};

/** A dive as it was dived. */
export const DiveTimelinesRequest = z
  .object(withOptionalBut(fields, ["site"]))
  .strict()
  .describe("A dive as it was dived, and what was filmed on it.");
export type DiveTimelinesRequest = z.infer<typeof DiveTimelinesRequest>;

import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, list, text } from "../field/choice.js";
import { withOptional, withOptionalBut } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { everySceneFields } from "../scene/every-scene.js";
import { textsAskedFields } from "../scene/texts-asked.js";
import { mostForecast, mostWindowDays, windowAims, windowLength_min } from "./values.js";

const datePattern = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;
const clockPattern = /^([01]\d|2[0-3]):[0-5]\d$/;

export const WindowAim = z
  .enum(windowAims)
  .describe(
    "What light is looked for: `natural_colour` of the subject by daylight, a `sunlit_background` of bright open water, or daylight so low that video lights lead (`lamps_lead`).",
  );

export const CloudForecast = z
  .object(
    withOptional(
      {
        date: text({
          description: "Day by the clocks of the site.",
          example: "2027-01-16",
          pattern: datePattern,
        }),
        hour: quantity({
          description:
            "Hour that begins then, by the clocks of the site. Left out, the entry is for the whole day.",
          unit: "1",
          min: 0,
          max: 23,
          integer: true,
          example: 9,
        }),
        cloud_oktas: quantity({
          description: "Eighths of the sky covered by cloud.",
          unit: "okta",
          min: 0,
          max: 8,
          integer: true,
          example: 3,
        }),
      },
      ["hour"],
    ),
  )
  .strict()
  .describe("Cloud that is forecast for a day, or for one hour of it.");

/** A site without a time. */
const siteField = (description: string) =>
  annotate(z.object({}).describe(description), {
    examples: [{ visibility_m: 25, water_hue: "blue", min_depth_m: 5, max_depth_m: 18 }],
  });

const fields = {
  site: siteField(
    "The site and the camera: a scene as `filter-choice` takes it, without place, time, sun and cloud, and without `camera_heading_deg`; `sun_side` says where the sun stands.",
  ),
  latitude_deg: quantity({
    description: "Latitude, north positive.",
    unit: "deg",
    min: -90,
    max: 90,
    example: -47.3,
  }),
  longitude_deg: quantity({
    description: "Longitude, east positive.",
    unit: "deg",
    min: -180,
    max: 180,
    example: -128.4,
  }),
  time_zone: text({
    description: "Time zone of the site, by its name in the IANA database.",
    example: "Etc/GMT+9",
    maxLength: 64,
  }),
  first_date: text({
    description: "First day, by the clocks of the site.",
    example: "2027-01-16",
    pattern: datePattern,
  }),
  last_date: text({
    description: `Last day, at most ${mostWindowDays} days in all. Left out, it is the first.`,
    example: "2027-01-18",
    pattern: datePattern,
  }),
  opens_at: text({
    description:
      "When diving may begin, by the clocks of the site. Where a clock change leaps over it, the first time after that.",
    example: "08:00",
    pattern: clockPattern,
  }),
  closes_at: text({
    description: "When it has to end: no window ends later.",
    example: "17:00",
    pattern: clockPattern,
  }),
  window_min: quantity({
    description: "Length of a window.",
    unit: "min",
    min: windowLength_min.least,
    max: windowLength_min.most,
    integer: true,
    example: 60,
    default: windowLength_min.usual,
  }),
  aim: choice(WindowAim, {
    description: "What light is looked for; `lamps_lead` needs video lights (`lamps`) in the site.",
    example: "natural_colour",
    default: "natural_colour",
  }),
  forecast: list(CloudForecast, {
    description: `Cloud from your forecast, up to ${mostForecast} entries. An hour without an entry of its own has that of its day, and where there is none, the sky is taken for clear, and the answer says so.`,
    example: [
      { date: "2027-01-16", cloud_oktas: 2 },
      { date: "2027-01-17", hour: 10, cloud_oktas: 7 },
    ],
    maxItems: mostForecast,
  }),
  ...textsAskedFields,
  ...everySceneFields,
};

/** One site, days and opening hours. */
export const LightWindowsRequest = z
  .object(
    withOptionalBut(fields, [
      "site",
      "latitude_deg",
      "longitude_deg",
      "time_zone",
      "first_date",
      "opens_at",
      "closes_at",
    ]),
  )
  .strict()
  .describe("One site, the days and the opening hours, and what light is looked for.");
export type LightWindowsRequest = z.infer<typeof LightWindowsRequest>;

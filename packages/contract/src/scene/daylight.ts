import { z } from "zod/v3";
import { choice, text } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { sceneDefaults } from "./defaults.js";
import { instantPattern, localTimePattern } from "./time.js";
import { daylightBases } from "./values.js";

export const DaylightBasis = z
  .enum(daylightBases)
  .describe(
    "Where daylight comes from: `none` (night, cave, inside of a wreck), `sun` (you give its height) or `place_time` (its height follows from place and time).",
  );

export const daylightFields = {
  daylight_basis: choice(DaylightBasis, {
    description: "Where daylight comes from; `place_time` by default if you give a place or a time.",
    example: "sun",
    default: sceneDefaults.daylight_basis,
  }),
  sun_elevation_deg: quantity({
    description: "Height of the sun above the horizon. Only with `daylight_basis` `sun`.",
    unit: "deg",
    min: 0,
    max: 90,
    example: 40,
    default: sceneDefaults.sun_elevation_deg,
  }),
  latitude_deg: quantity({
    description: "Latitude, north positive. Only with `daylight_basis` `place_time`.",
    unit: "deg",
    min: -90,
    max: 90,
    example: -47.3,
  }),
  longitude_deg: quantity({
    description: "Longitude, east positive. Only with `daylight_basis` `place_time`.",
    unit: "deg",
    min: -180,
    max: 180,
    example: -128.4,
  }),
  time: text({
    description:
      "Instant with its offset from UTC (RFC 3339). Only with `daylight_basis` `place_time`, in place of `local_time` and `time_zone`.",
    example: "2027-01-16T10:00:00-09:00",
    pattern: instantPattern,
  }),
  local_time: text({
    description:
      "What the clocks at the place show, without offset. Only with `daylight_basis` `place_time`, together with `time_zone`.",
    example: "2027-01-16T10:00",
    pattern: localTimePattern,
  }),
  time_zone: text({
    description: "Time zone of `local_time`, by its name in the IANA database.",
    example: "Etc/GMT+9",
    maxLength: 64,
  }),
  cloud_oktas: quantity({
    description: "Eighths of the sky covered by cloud.",
    unit: "okta",
    min: 0,
    max: 8,
    integer: true,
    example: 2,
    default: sceneDefaults.cloud_oktas,
  }),
  wind_speed_m_s: quantity({
    description: "Wind speed 10 m above the sea; it roughens the surface.",
    unit: "m/s",
    min: 0,
    max: 20,
    example: 4,
    default: sceneDefaults.wind_speed_m_s,
  }),
};

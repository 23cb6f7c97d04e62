import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { sceneDefaults } from "./defaults.js";
import { daylightBases } from "./values.js";

export const DaylightBasis = z
  .enum(daylightBases)
  .describe(
    "Where daylight comes from: `none` (night, cave, inside of a wreck) or `sun` (its height is given).",
  );

export const daylightFields = {
  daylight_basis: choice(DaylightBasis, {
    description: "Where daylight comes from.",
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
  cloud_oktas: quantity({
    description: "Eighths of the sky that are covered by cloud.",
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

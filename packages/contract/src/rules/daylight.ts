import { sceneDefaults } from "../scene/defaults.js";
import { placeTimeNames } from "../scene/place-time-names.js";
import { dayExists } from "../scene/time.js";
import type { Rule } from "./rule.js";

const sunWithBasisSun: Rule = {
  code: "sun_with_basis_sun",
  says: "`sun_elevation_deg` goes with `daylight_basis` `sun` alone.",
  fields: ["daylight_basis", "sun_elevation_deg"],
  violations: ({ daylight_basis = sceneDefaults.daylight_basis, sun_elevation_deg }) => {
    if (sun_elevation_deg === undefined || daylight_basis === "sun") return [];
    return [
      {
        pointer: "/sun_elevation_deg",
        message: `The height of the sun is given, but daylight_basis is ${daylight_basis}.`,
        allowed: "leave it out, or daylight_basis sun",
      },
    ];
  },
};

const placeWithBasisPlaceTime: Rule = {
  code: "place_with_basis_place_time",
  says: "Place and time go with `daylight_basis` `place_time` alone.",
  fields: ["daylight_basis", ...placeTimeNames],
  violations: (scene) => {
    const basis = scene.daylight_basis ?? sceneDefaults.daylight_basis;
    if (basis === "place_time") return [];
    return placeTimeNames
      .filter((name) => scene[name] !== undefined)
      .map((name) => ({
        pointer: `/${name}`,
        message: `${name} says nothing where daylight_basis is ${basis}.`,
        allowed: "leave it out, or daylight_basis place_time",
      }));
  },
};

const placeAndTimeWhole: Rule = {
  code: "place_and_time_whole",
  says: "`daylight_basis` `place_time` needs `latitude_deg`, `longitude_deg` and either `time` or `local_time` with `time_zone`.",
  fields: ["daylight_basis", ...placeTimeNames],
  violations: ({ daylight_basis, latitude_deg, longitude_deg, time, local_time, time_zone }) => {
    if (daylight_basis !== "place_time") return [];
    const pointer = "/daylight_basis";
    const broken = [];
    if (latitude_deg === undefined || longitude_deg === undefined) {
      const allowed = "latitude_deg and longitude_deg";
      broken.push({ pointer, message: "The place is not given.", allowed });
    }
    const onWall = local_time !== undefined || time_zone !== undefined;
    const allowed = "time, or local_time and time_zone";
    if (time !== undefined && onWall)
      broken.push({ pointer: "/time", message: "The time is given twice.", allowed });
    else if (time === undefined && (local_time === undefined || time_zone === undefined)) {
      broken.push({ pointer, message: `The time is ${onWall ? "half" : "not"} given.`, allowed });
    }
    return broken;
  },
};

const dayOfMonth: Rule = {
  code: "day_exists",
  says: "The day of `time` or `local_time` is one that its month has.",
  fields: ["time", "local_time"],
  violations: (scene) =>
    (["time", "local_time"] as const).flatMap((name) => {
      const value = scene[name];
      if (value === undefined || dayExists(value)) return [];
      return [
        { pointer: `/${name}`, message: "The month has no such day.", allowed: "a day of the calendar" },
      ];
    }),
};

export const daylightRules: readonly Rule[] = [
  sunWithBasisSun,
  placeWithBasisPlaceTime,
  placeAndTimeWhole,
  dayOfMonth,
];

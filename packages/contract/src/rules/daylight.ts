import { dayExists } from "../scene/day-exists.js";
import { impliedDaylightBasis } from "../scene/implied-daylight-basis.js";
import { placeTimeNames } from "../scene/place-time-names.js";
import type { Rule } from "./rule.js";

const sunWithBasisSun: Rule = {
  code: "sun_with_basis_sun",
  fields: ["daylight_basis", "sun_elevation_deg"],
  violations: (scene) => {
    const basis = impliedDaylightBasis(scene);
    if (scene.sun_elevation_deg === undefined || basis === "sun") return [];
    return [
      {
        pointer: "/sun_elevation_deg",
        message: `The height of the sun is given, but daylight_basis is ${basis}.`,
        allowed: "leave it out, or daylight_basis sun",
      },
    ];
  },
};

const placeWithBasisPlaceTime: Rule = {
  code: "place_with_basis_place_time",
  fields: ["daylight_basis", ...placeTimeNames],
  violations: (scene) => {
    const basis = impliedDaylightBasis(scene);
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
  fields: ["daylight_basis", ...placeTimeNames],
  violations: (scene) => {
    if (impliedDaylightBasis(scene) !== "place_time") return [];
    const { time, local_time, time_zone } = scene;
    const broken = (["latitude_deg", "longitude_deg"] as const)
      .filter((name) => scene[name] === undefined)
      .map((name) => ({
        pointer: `/${name}`,
        message: `${name} is missing: the sun's height follows from place and time.`,
        allowed: "latitude_deg and longitude_deg",
      }));
    const onWall = local_time !== undefined || time_zone !== undefined;
    const allowed = "time, or local_time and time_zone";
    if (time !== undefined && onWall)
      broken.push({ pointer: "/time", message: "The time is given twice.", allowed });
    else if (time === undefined && (local_time === undefined || time_zone === undefined)) {
      const pointer =
        local_time === undefined && time_zone !== undefined ? "/local_time" : onWall ? "/time_zone" : "/time";
      broken.push({ pointer, message: `The time is ${onWall ? "half" : "not"} given.`, allowed });
    }
    return broken;
  },
};

const dayOfMonth: Rule = {
  code: "day_exists",
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

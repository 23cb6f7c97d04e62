import { dayExists } from "../scene/day-exists.js";
import { impliedDaylightBasis } from "../scene/implied-daylight-basis.js";
import { placeTimeNames } from "../scene/place-time-names.js";
import { broken, type Nothing, type RuleOf, type Violation } from "./rule.js";

const sunWithBasisSun: RuleOf<"sun_with_basis_sun", { daylight_basis: string }> = {
  code: "sun_with_basis_sun",
  violations: (scene) => {
    const basis = impliedDaylightBasis(scene);
    if (scene.sun_elevation_deg === undefined || basis === "sun") return [];
    return [broken("/sun_elevation_deg", { daylight_basis: basis })];
  },
};

const placeWithBasisPlaceTime: RuleOf<
  "place_with_basis_place_time",
  { field: string; daylight_basis: string }
> = {
  code: "place_with_basis_place_time",
  violations: (scene) => {
    const basis = impliedDaylightBasis(scene);
    if (basis === "place_time") return [];
    return placeTimeNames
      .filter((name) => scene[name] !== undefined)
      .map((field) => broken(`/${field}`, { field, daylight_basis: basis }));
  },
};

type PlaceAndTime = { case: "missing"; field: string } | { case: "twice" | "half" | "not_given" };

const placeAndTimeWhole: RuleOf<"place_and_time_whole", PlaceAndTime> = {
  code: "place_and_time_whole",
  violations: (scene) => {
    if (impliedDaylightBasis(scene) !== "place_time") return [];
    const { time, local_time, time_zone } = scene;
    const found: Violation<PlaceAndTime>[] = (["latitude_deg", "longitude_deg"] as const)
      .filter((name) => scene[name] === undefined)
      .map((field) => broken(`/${field}`, { case: "missing", field }));
    const onWall = local_time !== undefined || time_zone !== undefined;
    if (time !== undefined && onWall) found.push(broken("/time", { case: "twice" }));
    else if (time === undefined && (local_time === undefined || time_zone === undefined)) {
      const pointer =
        local_time === undefined && time_zone !== undefined ? "/local_time" : onWall ? "/time_zone" : "/time";
      found.push(broken(pointer, { case: onWall ? "half" : "not_given" }));
    }
    return found;
  },
};

const dayOfMonth: RuleOf<"day_exists", Nothing> = {
  code: "day_exists",
  violations: (scene) =>
    (["time", "local_time"] as const).flatMap((name) => {
      const value = scene[name];
      if (value === undefined || dayExists(value)) return [];
      return [broken(`/${name}`, {})];
    }),
};

export const daylightRules = [
  sunWithBasisSun,
  placeWithBasisPlaceTime,
  placeAndTimeWhole,
  dayOfMonth,
] as const;

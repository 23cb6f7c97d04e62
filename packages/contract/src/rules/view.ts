import { impliedDaylightBasis } from "../scene/implied-daylight-basis.js";
import { broken, type Nothing, type RuleOf } from "./rule.js";

const oneSunSide: RuleOf<"one_sun_side", Nothing> = {
  code: "one_sun_side",
  violations: ({ sun_side, camera_heading_deg }) =>
    sun_side === undefined || camera_heading_deg === undefined ? [] : [broken("/sun_side", {})],
};

const headingWithPlaceTime: RuleOf<"heading_with_place_time", { daylight_basis: string }> = {
  code: "heading_with_place_time",
  violations: (scene) => {
    const basis = impliedDaylightBasis(scene);
    if (scene.camera_heading_deg === undefined || basis === "place_time") return [];
    return [broken("/camera_heading_deg", { daylight_basis: basis })];
  },
};

export const viewRules = [oneSunSide, headingWithPlaceTime] as const;

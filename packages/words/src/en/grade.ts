import type { GradeTexts } from "../grade-texts.js";
import { filterName } from "./filter-name.js";
import { between, depth, shown, strength } from "./format.js";

const curves = {
  rec709: "ITU-R BT.709",
  hlg: "HLG of ITU-R BT.2100, white at 75 %",
  log: "a logarithmic curve over 13 stops",
  linear: "a linear recording",
};

export const grade: GradeTexts = {
  name: ({ depth_m, filter }, u) => `Starting grade for ${depth(depth_m, u)}, ${filterName(filter)}`,
  does: ({ finish, without_delta_e00, delta_e00 }) =>
    `${finish === "matched" ? "Matched to a chart" : "Black level, exposure, balance and saturation"}: takes the colour error from ${shown(without_delta_e00)} (${strength(without_delta_e00)}) to ${shown(delta_e00)} (${strength(delta_e00)}). It is a start: go on by eye.`,
  holds: ({ min_depth_m, max_depth_m }, u) =>
    `It holds for footage ${between(min_depth_m, max_depth_m, u)}, through the same filter if any, with the exposure and the white balance of that depth.`,
  red: {
    excellent: "Red is recorded well here. Red that was not recorded stays lost.",
    acceptable: "Red is recorded with some noise here. Red that was not recorded stays lost.",
    poor: "Little red is recorded here: this grade lifts its noise, too. Red that was not recorded stays lost.",
    gone: "No red is recorded here. It stays lost: no grade brings it back.",
  },
  input: ({ finish, curve }) =>
    `${finish === "matched" ? "Channels of the camera after its white balance, without its own colour matrix" : "The camera's own picture, primaries of ITU-R BT.709"}; code values 0 to 1, full range, of ${typeof curve === "string" ? curves[curve] : "the curve that was sent"}.`,
  output:
    "sRGB of IEC 61966-2-1, code values 0 to 1; what lies beyond is a colour that a screen cannot show.",
  linear:
    "Linear light, primaries of ITU-R BT.709, 0 to 1: decode the recording before, encode for the screen afterwards.",
  convert: "Your editor may need it converted.",
};

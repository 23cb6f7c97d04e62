import { shortestShutter_s, shutterOfFrame_s } from "../scene/shutter.js";
import type { Rule } from "./rule.js";

const fields = ["shutter_s", "frame_rate_fps", "shutter_angle_deg"] as const;

const oneShutter: Rule = {
  code: "one_shutter",
  says: "The exposure time is given as `shutter_s`, or by `frame_rate_fps` and `shutter_angle_deg`.",
  fields,
  violations: ({ shutter_s, frame_rate_fps, shutter_angle_deg }) => {
    if (shutter_s === undefined || (frame_rate_fps === undefined && shutter_angle_deg === undefined))
      return [];
    return [
      {
        pointer: "/shutter_s",
        message: "The exposure time is given twice.",
        allowed: "shutter_s, or frame_rate_fps and shutter_angle_deg",
      },
    ];
  },
};

const shutterNotTooShort: Rule = {
  code: "shutter_not_too_short",
  says: `The exposure time from \`frame_rate_fps\` and \`shutter_angle_deg\` is at least ${shortestShutter_s} s.`,
  fields,
  violations: ({ frame_rate_fps, shutter_angle_deg }) => {
    const shutter_s = shutterOfFrame_s(frame_rate_fps, shutter_angle_deg);
    if (shutter_s >= shortestShutter_s) return [];
    return [
      {
        pointer: `/${shutter_angle_deg === undefined ? "frame_rate_fps" : "shutter_angle_deg"}`,
        message: `Frame rate and shutter angle give an exposure time of ${shutter_s} s.`,
        allowed: `a larger angle or a lower rate: at least ${shortestShutter_s} s`,
      },
    ];
  },
};

export const shutterRules: readonly Rule[] = [oneShutter, shutterNotTooShort];

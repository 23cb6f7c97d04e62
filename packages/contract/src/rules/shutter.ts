import { shortestShutter_s, shutterOfFrame_s } from "../scene/shutter.js";
import type { Rule } from "./rule.js";

const fields = ["shutter_s", "frame_rate_fps", "shutter_angle_deg"] as const;

const oneShutter: Rule = {
  code: "one_shutter",
  fields,
  violations: ({ shutter_s, shutter_angle_deg }) => {
    if (shutter_s === undefined || shutter_angle_deg === undefined) return [];
    return [
      {
        pointer: "/shutter_s",
        message: "The exposure time is given twice.",
        allowed: "shutter_s, or shutter_angle_deg with frame_rate_fps",
      },
    ];
  },
};

const shutterWithinFrame: Rule = {
  code: "shutter_within_frame",
  fields,
  violations: ({ shutter_s, frame_rate_fps }) => {
    if (shutter_s === undefined || frame_rate_fps === undefined) return [];
    const frame_s = shutterOfFrame_s(frame_rate_fps, 360);
    if (shutter_s <= frame_s) return [];
    return [
      {
        pointer: "/shutter_s",
        message: `At ${frame_rate_fps} frames per second a frame lasts ${frame_s} s.`,
        allowed: `at most ${frame_s} s`,
      },
    ];
  },
};

const shutterNotTooShort: Rule = {
  code: "shutter_not_too_short",
  fields,
  violations: ({ shutter_s: given, frame_rate_fps, shutter_angle_deg }) => {
    if (given !== undefined) return [];
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

export const shutterRules: readonly Rule[] = [oneShutter, shutterWithinFrame, shutterNotTooShort];

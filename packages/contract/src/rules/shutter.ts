import { shortestShutter_s, shutterOfFrame_s } from "../scene/shutter.js";
import { broken, type Nothing, type RuleOf } from "./rule.js";

const oneShutter: RuleOf<"one_shutter", Nothing> = {
  code: "one_shutter",
  violations: ({ shutter_s, shutter_angle_deg }) => {
    if (shutter_s === undefined || shutter_angle_deg === undefined) return [];
    return [broken("/shutter_s", {})];
  },
};

const shutterWithinFrame: RuleOf<"shutter_within_frame", { frame_rate_fps: number; frame_s: number }> = {
  code: "shutter_within_frame",
  violations: ({ shutter_s, frame_rate_fps }) => {
    if (shutter_s === undefined || frame_rate_fps === undefined) return [];
    const frame_s = shutterOfFrame_s(frame_rate_fps, 360);
    if (shutter_s <= frame_s) return [];
    return [broken("/shutter_s", { frame_rate_fps, frame_s })];
  },
};

const shutterNotTooShort: RuleOf<"shutter_not_too_short", { shutter_s: number; shortest_s: number }> = {
  code: "shutter_not_too_short",
  violations: ({ shutter_s: given, frame_rate_fps, shutter_angle_deg }) => {
    if (given !== undefined) return [];
    const shutter_s = shutterOfFrame_s(frame_rate_fps, shutter_angle_deg);
    if (shutter_s >= shortestShutter_s) return [];
    return [
      broken(`/${shutter_angle_deg === undefined ? "frame_rate_fps" : "shutter_angle_deg"}`, {
        shutter_s,
        shortest_s: shortestShutter_s,
      }),
    ];
  },
};

export const shutterRules = [oneShutter, shutterWithinFrame, shutterNotTooShort] as const;

import { rising } from "./rising.js";
import { broken, type Nothing, type RuleOf } from "./rule.js";

const oneBottom: RuleOf<"one_bottom", Nothing> = {
  code: "one_bottom",
  violations: ({ bottom, bottom_reflectance }) =>
    bottom === undefined || bottom_reflectance === undefined ? [] : [broken("/bottom_reflectance", {})],
};

const bottomWithDepth: RuleOf<"bottom_with_depth", Nothing> = {
  code: "bottom_with_depth",
  violations: ({ bottom, bottom_depth_m }) =>
    bottom !== "none" || bottom_depth_m === undefined ? [] : [broken("/bottom_depth_m", {})],
};

const bottomBelowCamera: RuleOf<"bottom_below_camera", { bottom_depth_m: number; deepest_m: number }> = {
  code: "bottom_below_camera",
  violations: ({ bottom_depth_m, depth_m, max_depth_m }) => {
    const deepest_m = max_depth_m ?? depth_m;
    if (bottom_depth_m === undefined || deepest_m === undefined || bottom_depth_m >= deepest_m) return [];
    return [broken("/bottom_depth_m", { bottom_depth_m, deepest_m })];
  },
};

export const bottomRules = [
  oneBottom,
  bottomWithDepth,
  bottomBelowCamera,
  rising("bottom_reflectance"),
] as const;

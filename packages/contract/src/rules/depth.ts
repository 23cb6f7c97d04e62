import type { Rule } from "./rule.js";

const allowed = "depth_m, or min_depth_m together with max_depth_m";

const oneDepth: Rule = {
  code: "one_depth",
  fields: ["depth_m", "min_depth_m", "max_depth_m"],
  violations: ({ depth_m, min_depth_m, max_depth_m }) => {
    const hasMin = min_depth_m !== undefined;
    const hasMax = max_depth_m !== undefined;
    if (depth_m !== undefined) {
      if (!hasMin && !hasMax) return [];
      return [{ pointer: "/depth_m", message: "The depth is given twice.", allowed }];
    }
    if (hasMin && hasMax) return [];
    if (!hasMin && !hasMax) return [{ pointer: "", message: "The depth is not given.", allowed }];
    const missing = hasMin ? "max_depth_m" : "min_depth_m";
    return [
      { pointer: `/${hasMin ? "min_depth_m" : "max_depth_m"}`, message: `${missing} is missing.`, allowed },
    ];
  },
};

const depthsInOrder: Rule = {
  code: "depths_in_order",
  fields: ["min_depth_m", "max_depth_m"],
  violations: ({ min_depth_m, max_depth_m }) => {
    if (min_depth_m === undefined || max_depth_m === undefined || min_depth_m <= max_depth_m) return [];
    return [
      {
        pointer: "/min_depth_m",
        message: `${min_depth_m} m is deeper than max_depth_m, ${max_depth_m} m.`,
        allowed: `at most ${max_depth_m} m`,
      },
    ];
  },
};

export const depthRules: readonly Rule[] = [oneDepth, depthsInOrder];

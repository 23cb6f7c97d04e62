import { broken, type RuleOf } from "./rule.js";

const oneDepth: RuleOf<"one_depth", { case: "twice" | "not_given" } | { case: "missing"; field: string }> = {
  code: "one_depth",
  violations: ({ depth_m, min_depth_m, max_depth_m }) => {
    const hasMin = min_depth_m !== undefined;
    const hasMax = max_depth_m !== undefined;
    if (depth_m !== undefined) {
      if (!hasMin && !hasMax) return [];
      return [broken("/depth_m", { case: "twice" })];
    }
    if (hasMin && hasMax) return [];
    if (!hasMin && !hasMax) return [broken("", { case: "not_given" })];
    const [there, field] = hasMin ? ["min_depth_m", "max_depth_m"] : ["max_depth_m", "min_depth_m"];
    return [broken(`/${there}`, { case: "missing", field })];
  },
};

const depthsInOrder: RuleOf<"depths_in_order", { min_depth_m: number; max_depth_m: number }> = {
  code: "depths_in_order",
  violations: ({ min_depth_m, max_depth_m }) => {
    if (min_depth_m === undefined || max_depth_m === undefined || min_depth_m <= max_depth_m) return [];
    return [broken("/min_depth_m", { min_depth_m, max_depth_m })];
  },
};

export const depthRules = [oneDepth, depthsInOrder] as const;

import { sceneDefaults } from "../scene/defaults.js";
import type { Scene } from "../scene/scene.js";
import type { Rule, Violation } from "./rule.js";

type Bounds = "iso" | "f_number" | "white_balance_cct_K";
type Limit =
  | "min_iso"
  | "max_iso"
  | "min_f_number"
  | "max_f_number"
  | "white_balance_min_cct_K"
  | "white_balance_max_cct_K";

const limits: Record<Bounds, { min: Limit; max: Limit }> = {
  iso: { min: "min_iso", max: "max_iso" },
  f_number: { min: "min_f_number", max: "max_f_number" },
  white_balance_cct_K: { min: "white_balance_min_cct_K", max: "white_balance_max_cct_K" },
};

/** The limit that holds for `scene`, and how to name it to its caller. */
function limit(scene: Scene, field: Limit): { value: number; name: string } {
  const given = scene[field];
  const value = given ?? sceneDefaults[field];
  return { value, name: `${field} (${value}${given === undefined ? " unless stated" : ""})` };
}

function ordered(bounds: Bounds, equalAllowed: boolean): Rule {
  const { min, max } = limits[bounds];
  const relation = equalAllowed ? "not above" : "below";
  return {
    code: `${bounds}_limits_in_order`,
    fields: [min, max],
    violations: (scene) => {
      const low = limit(scene, min);
      const high = limit(scene, max);
      if (low.value < high.value || (equalAllowed && low.value === high.value)) return [];
      const pointer = `/${scene[min] === undefined ? max : min}`;
      return [
        { pointer, message: `${low.name} is not below ${high.name}.`, allowed: `${min} ${relation} ${max}` },
      ];
    },
  };
}

function within(field: "iso" | "f_number"): Rule {
  const { min, max } = limits[field];
  return {
    code: `${field}_within_limits`,
    fields: [field, min, max],
    violations: (scene) => {
      const value = scene[field];
      if (value === undefined) return [];
      const low = limit(scene, min);
      const high = limit(scene, max);
      // Limits out of order are another rule's business.
      if (low.value > high.value || (value >= low.value && value <= high.value)) return [];
      const broken: Violation = {
        pointer: `/${field}`,
        message: `${value} is ${value < low.value ? `below ${low.name}` : `above ${high.name}`}.`,
        allowed: `${low.value} to ${high.value}, or other limits in ${min} and ${max}`,
      };
      return [broken];
    },
  };
}

export const orderRules: readonly Rule[] = [
  ordered("iso", true),
  within("iso"),
  ordered("f_number", true),
  within("f_number"),
  ordered("white_balance_cct_K", false),
];

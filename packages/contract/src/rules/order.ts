import { cameraDefault } from "../scene/defaults.js";
import type { Scene } from "../scene/scene.js";
import { broken, type RuleOf } from "./rule.js";

/** A limit that holds, as stated or by default. */
interface Limit {
  field: string;
  value: number;
  stated: boolean;
}

export interface OutOfOrder {
  low: Limit;
  high: Limit;
}

type Bounds = "iso" | "f_number" | "white_balance_cct_K";
type LimitField =
  | "min_iso"
  | "max_iso"
  | "min_f_number"
  | "max_f_number"
  | "white_balance_min_cct_K"
  | "white_balance_max_cct_K";

const limits: Record<Bounds, { min: LimitField; max: LimitField }> = {
  iso: { min: "min_iso", max: "max_iso" },
  f_number: { min: "min_f_number", max: "max_f_number" },
  white_balance_cct_K: { min: "white_balance_min_cct_K", max: "white_balance_max_cct_K" },
};

/** The limit that holds for `scene`. */
function limit(scene: Scene, field: LimitField): Limit {
  const given = scene[field];
  return { field, value: given ?? cameraDefault(scene, field), stated: given !== undefined };
}

function ordered<Of extends Bounds>(
  bounds: Of,
  equalAllowed: boolean,
): RuleOf<`${Of}_limits_in_order`, OutOfOrder> {
  const { min, max } = limits[bounds];
  return {
    code: `${bounds}_limits_in_order`,
    violations: (scene) => {
      const low = limit(scene, min);
      const high = limit(scene, max);
      if (low.value < high.value || (equalAllowed && low.value === high.value)) return [];
      const pointer = `/${scene[min] === undefined ? max : min}`;
      return [broken(pointer, { low, high })];
    },
  };
}

function within<Field extends "iso" | "f_number">(
  field: Field,
): RuleOf<`${Field}_within_limits`, OutOfOrder & { value: number }> {
  const { min, max } = limits[field];
  return {
    code: `${field}_within_limits`,
    violations: (scene) => {
      const value = scene[field];
      if (value === undefined) return [];
      const low = limit(scene, min);
      const high = limit(scene, max);
      // Limits out of order are another rule's business.
      if (low.value > high.value || (value >= low.value && value <= high.value)) return [];
      return [broken(`/${field}`, { value, low, high })];
    },
  };
}

export const orderRules = [
  ordered("iso", true),
  within("iso"),
  ordered("f_number", true),
  within("f_number"),
  ordered("white_balance_cct_K", false),
] as const;

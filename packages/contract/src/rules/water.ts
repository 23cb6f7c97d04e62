import { waterBases } from "../scene/water-bases.js";
import { rising } from "./rising.js";
import type { Rule } from "./rule.js";

const list = waterBases.map(({ field, what }) => `${field} (${what})`).join(", ");

const oneWaterBasis: Rule = {
  code: "one_water_basis",
  says: "The water is described in exactly one way.",
  fields: waterBases.map(({ field }) => field),
  violations: (scene) => {
    const given = waterBases.filter(({ field }) => scene[field] !== undefined);
    if (given.length === 1) return [];
    if (given.length === 0) {
      return [{ pointer: "", message: "The water is not described.", allowed: `exactly one of: ${list}` }];
    }
    return given.map(({ field }) => ({
      pointer: `/${field}`,
      message: `The water is described in ${given.length} ways at once.`,
      allowed: `exactly one of: ${list}`,
    }));
  },
};

export const waterRules: readonly Rule[] = [oneWaterBasis, rising("kd_samples")];

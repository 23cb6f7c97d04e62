import { waterBases } from "../scene/water-bases.js";
import { rising } from "./rising.js";
import type { Rule } from "./rule.js";
import { wholeGroups } from "./whole-groups.js";

const list = waterBases.map(({ field, what }) => `${field} (${what})`).join(", ");

const oneWaterBasis: Rule = {
  code: "one_water_basis",
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

const companions = [...new Set(waterBases.flatMap(({ needs, takes }) => [...needs, ...takes]))];

const waterCompanions: Rule = {
  code: "water_companions",
  fields: [...waterBases.map(({ field }) => field), ...companions],
  violations: (scene) => {
    const given = waterBases.filter(({ field }) => scene[field] !== undefined);
    const missing = given.flatMap(({ field, needs }) =>
      needs
        .filter((name) => scene[name] === undefined)
        .map((name) => ({
          pointer: `/${field}`,
          message: `${name} is missing.`,
          allowed: `${field} together with ${name}`,
        })),
    );
    const welcome = new Set<string>(given.flatMap(({ needs, takes }) => [...needs, ...takes]));
    const stray = companions
      .filter((name) => scene[name] !== undefined && !welcome.has(name))
      .map((name) => ({
        pointer: `/${name}`,
        message: `${name} says nothing here.`,
        allowed: `with ${hostsOf(name).join(" or ")}, or not at all`,
      }));
    return [...missing, ...stray];
  },
};

function hostsOf(name: string): string[] {
  return waterBases
    .filter(({ needs, takes }) => [...needs, ...takes].some((companion) => companion === name))
    .map(({ field }) => field);
}

export const waterRules: readonly Rule[] = [
  oneWaterBasis,
  waterCompanions,
  rising("kd_samples"),
  wholeGroups("card_exposure", ["iso", "shutter_s", "f_number"]),
  wholeGroups("card_gains", ["red_gain", "green_gain", "blue_gain"]),
];

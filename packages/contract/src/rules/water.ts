import { waterBases } from "../scene/water-bases.js";
import { rising } from "./rising.js";
import { broken, type RuleOf, type Violation } from "./rule.js";
import { wholeGroups } from "./whole-groups.js";

const oneWaterBasis: RuleOf<
  "one_water_basis",
  { /** In how many ways the water is described. */ given: number }
> = {
  code: "one_water_basis",
  violations: (scene) => {
    const given = waterBases.filter(({ field }) => scene[field] !== undefined);
    if (given.length === 1) return [];
    const parameters = { given: given.length };
    if (given.length === 0) return [broken("", parameters)];
    return given.map(({ field }) => broken(`/${field}`, parameters));
  },
};

const companions = [...new Set(waterBases.flatMap(({ needs, takes }) => [...needs, ...takes]))];

type Companions =
  | { case: "missing"; field: string; missing: string }
  | { case: "stray"; field: string; goes_with: readonly string[] };
type Broken = Violation<Companions>;

const waterCompanions: RuleOf<"water_companions", Companions> = {
  code: "water_companions",
  violations: (scene) => {
    const given = waterBases.filter(({ field }) => scene[field] !== undefined);
    const missing = given.flatMap(({ field, needs }) =>
      needs
        .filter((name) => scene[name] === undefined)
        .map((missing): Broken => broken(`/${field}`, { case: "missing", field, missing })),
    );
    const welcome = new Set<string>(given.flatMap(({ needs, takes }) => [...needs, ...takes]));
    const stray = companions
      .filter((name) => scene[name] !== undefined && !welcome.has(name))
      .map((field): Broken => {
        return broken(`/${field}`, { case: "stray", field, goes_with: hostsOf(field) });
      });
    return [...missing, ...stray];
  },
};

function hostsOf(name: string): string[] {
  return waterBases
    .filter(({ needs, takes }) => [...needs, ...takes].some((companion) => companion === name))
    .map(({ field }) => field);
}

export const waterRules = [
  oneWaterBasis,
  waterCompanions,
  rising("kd_samples"),
  wholeGroups("card_exposure", ["iso", "shutter_s", "f_number"]),
  wholeGroups("card_gains", ["red_gain", "green_gain", "blue_gain"]),
] as const;

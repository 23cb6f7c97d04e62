import { filterPair } from "./filter-pair.js";
import { repeatedIds } from "./repeated-ids.js";
import { notRising } from "./rising.js";
import { broken, type Rule, type RuleOf, type Violation } from "./rule.js";
import type { SceneRuleParameters } from "./rule-parameters.js";

const kitIdsUnique: RuleOf<"kit_ids_unique"> = {
  code: "kit_ids_unique",
  fields: ["kit"],
  violations: ({ kit = [] }) => repeatedIds(kit, "/kit"),
};

type Broken = Violation<SceneRuleParameters["kit_filters"]>;

const kitFilters: RuleOf<"kit_filters"> = {
  code: "kit_filters",
  fields: ["kit"],
  violations: ({ kit = [] }) =>
    kit.flatMap(({ item, filter_kind, filter_density, filter_transmittance }, index): Broken[] => {
      const pointer = `/kit/${index}`;
      const nominal = filter_kind !== undefined || filter_density !== undefined;
      const measured = filter_transmittance !== undefined;
      if (item === "lamp") return nominal || measured ? [broken(pointer, { case: "lamp" })] : [];
      if (nominal && measured) return [broken(pointer, { case: "twice" })];
      if (!nominal && !measured) return [broken(pointer, { case: "not_described" })];
      return filterPair(`${pointer}/`, filter_kind, filter_density).map(
        (half): Broken => broken(half.pointer, { case: "half", ...half.parameters }),
      );
    }),
};

const kitCurvesRising: RuleOf<"kit_curves_rising"> = {
  code: "kit_curves_rising",
  fields: ["kit"],
  violations: ({ kit = [] }) =>
    kit.flatMap(({ filter_transmittance = [] }, index) =>
      notRising(filter_transmittance, `/kit/${index}/filter_transmittance`),
    ),
};

export const kitRules: readonly Rule[] = [kitIdsUnique, kitFilters, kitCurvesRising];

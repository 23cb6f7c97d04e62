import { filterPair } from "./filter-pair.js";
import { repeatedIds } from "./repeated-ids.js";
import { notRising } from "./rising.js";
import type { Rule } from "./rule.js";

const kitIdsUnique: Rule = {
  code: "kit_ids_unique",
  fields: ["kit"],
  violations: ({ kit = [] }) => repeatedIds(kit, "/kit"),
};

const kitFilters: Rule = {
  code: "kit_filters",
  fields: ["kit"],
  violations: ({ kit = [] }) =>
    kit.flatMap(({ item, filter_kind, filter_density, filter_transmittance }, index) => {
      const pointer = `/kit/${index}`;
      const nominal = filter_kind !== undefined || filter_density !== undefined;
      const measured = filter_transmittance !== undefined;
      const allowed = "filter_kind and filter_density, or filter_transmittance";
      if (item === "lamp") {
        return nominal || measured
          ? [{ pointer, message: "A lamp is no filter.", allowed: "no filter fields" }]
          : [];
      }
      if (nominal && measured) return [{ pointer, message: "The filter is given twice.", allowed }];
      if (!nominal && !measured) return [{ pointer, message: "The filter is not described.", allowed }];
      return filterPair(`${pointer}/`, filter_kind, filter_density);
    }),
};

const kitCurvesRising: Rule = {
  code: "kit_curves_rising",
  fields: ["kit"],
  violations: ({ kit = [] }) =>
    kit.flatMap(({ filter_transmittance = [] }, index) =>
      notRising(filter_transmittance, `/kit/${index}/filter_transmittance`),
    ),
};

export const kitRules: readonly Rule[] = [kitIdsUnique, kitFilters, kitCurvesRising];

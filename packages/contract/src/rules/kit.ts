import { filterPair, type HalfFilter } from "./filter-pair.js";
import { type RepeatedId, repeatedIds } from "./repeated-ids.js";
import { type NotRising, notRising } from "./rising.js";
import { broken, type RuleOf, type Violation } from "./rule.js";

const kitIdsUnique: RuleOf<"kit_ids_unique", RepeatedId> = {
  code: "kit_ids_unique",
  violations: ({ kit = [] }) => repeatedIds(kit, "/kit"),
};

type KitFilter = { case: "lamp" | "twice" | "not_described" } | ({ case: "half" } & HalfFilter);
type Broken = Violation<KitFilter>;

const kitFilters: RuleOf<"kit_filters", KitFilter> = {
  code: "kit_filters",
  violations: ({ kit = [] }) =>
    kit.flatMap((owned, index): Broken[] => {
      const { item, filter_kind, filter_density, filter_stops } = owned;
      const { filter_transmittance, filter_samples } = owned;
      const pointer = `/kit/${index}`;
      const nominal = (filter_kind ?? filter_density ?? filter_stops) !== undefined;
      const measured = (filter_transmittance ?? filter_samples) !== undefined;
      if (item === "lamp") return nominal || measured ? [broken(pointer, { case: "lamp" })] : [];
      const both = filter_transmittance !== undefined && filter_samples !== undefined;
      if ((nominal && measured) || both) return [broken(pointer, { case: "twice" })];
      if (!nominal && !measured) return [broken(pointer, { case: "not_described" })];
      return filterPair(`${pointer}/`, filter_kind, filter_density, filter_stops).map(
        (half): Broken => broken(half.pointer, { case: "half", ...half.parameters }),
      );
    }),
};

const kitCurvesRising: RuleOf<"kit_curves_rising", NotRising> = {
  code: "kit_curves_rising",
  violations: ({ kit = [] }) =>
    kit.flatMap(({ filter_transmittance = [] }, index) =>
      notRising(filter_transmittance, `/kit/${index}/filter_transmittance`),
    ),
};

export const kitRules = [kitIdsUnique, kitFilters, kitCurvesRising] as const;

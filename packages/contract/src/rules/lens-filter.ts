import { filterPair, type HalfFilter } from "./filter-pair.js";
import { rising } from "./rising.js";
import { broken, type Nothing, type RuleOf } from "./rule.js";

const oneLensFilter: RuleOf<"one_lens_filter", Nothing> = {
  code: "one_lens_filter",
  fields: ["filter_kind", "filter_density", "filter_transmittance"],
  violations: ({ filter_kind, filter_density, filter_transmittance }) => {
    if (filter_transmittance === undefined || (filter_kind === undefined && filter_density === undefined))
      return [];
    return [broken("/filter_transmittance", {})];
  },
};

const lensFilterPair: RuleOf<"lens_filter_pair", HalfFilter> = {
  code: "lens_filter_pair",
  fields: ["filter_kind", "filter_density"],
  violations: ({ filter_kind, filter_density }) => filterPair("/", filter_kind, filter_density),
};

export const lensFilterRules = [oneLensFilter, lensFilterPair, rising("filter_transmittance")] as const;

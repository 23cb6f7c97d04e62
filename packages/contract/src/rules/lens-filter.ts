import { filterPair } from "./filter-pair.js";
import { rising } from "./rising.js";
import type { Rule } from "./rule.js";

const oneLensFilter: Rule = {
  code: "one_lens_filter",
  fields: ["filter_kind", "filter_density", "filter_transmittance"],
  violations: ({ filter_kind, filter_density, filter_transmittance }) => {
    if (filter_transmittance === undefined || (filter_kind === undefined && filter_density === undefined))
      return [];
    return [
      {
        pointer: "/filter_transmittance",
        message: "The lens filter is given twice.",
        allowed: "filter_kind and filter_density, or filter_transmittance",
      },
    ];
  },
};

const lensFilterPair: Rule = {
  code: "lens_filter_pair",
  fields: ["filter_kind", "filter_density"],
  violations: ({ filter_kind, filter_density }) => filterPair("/", filter_kind, filter_density),
};

export const lensFilterRules: readonly Rule[] = [
  oneLensFilter,
  lensFilterPair,
  rising("filter_transmittance"),
];

import { filterPair, type HalfFilter } from "./filter-pair.js";
import { filterSamplesAgree } from "./filter-samples.js";
import { rising } from "./rising.js";
import { broken, type Nothing, type RuleOf } from "./rule.js";

const oneLensFilter: RuleOf<"one_lens_filter", Nothing> = {
  code: "one_lens_filter",
  violations: ({ filter_kind, filter_density, filter_stops, filter_samples, filter_transmittance }) => {
    const nominal = (filter_kind ?? filter_density ?? filter_stops) !== undefined;
    if (filter_samples !== undefined && (nominal || filter_transmittance !== undefined))
      return [broken("/filter_samples", {})];
    return nominal && filter_transmittance !== undefined ? [broken("/filter_transmittance", {})] : [];
  },
};

const oneFilterStrength: RuleOf<"one_filter_strength", Nothing> = {
  code: "one_filter_strength",
  violations: ({ filter_density, filter_stops, kit = [] }) => [
    ...(filter_density === undefined || filter_stops === undefined ? [] : [broken("/filter_stops", {})]),
    ...kit.flatMap((item, index) =>
      item.filter_density === undefined || item.filter_stops === undefined
        ? []
        : [broken(`/kit/${index}/filter_stops`, {})],
    ),
  ],
};

const lensFilterPair: RuleOf<"lens_filter_pair", HalfFilter> = {
  code: "lens_filter_pair",
  violations: ({ filter_kind, filter_density, filter_stops }) =>
    filterPair("/", filter_kind, filter_density, filter_stops),
};

export const lensFilterRules = [
  oneLensFilter,
  oneFilterStrength,
  lensFilterPair,
  rising("filter_transmittance"),
  filterSamplesAgree,
] as const;

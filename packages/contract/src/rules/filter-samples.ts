import { contradictions, type FilterSamplesProblem } from "./filter-contradictions.js";
import type { RuleOf } from "./rule.js";

export const filterSamplesAgree: RuleOf<"filter_samples_agree", FilterSamplesProblem> = {
  code: "filter_samples_agree",
  violations: ({ filter_samples, kit = [] }) => [
    ...(filter_samples ? contradictions(filter_samples, "/filter_samples") : []),
    ...kit.flatMap(({ filter_samples: owned }, index) =>
      owned ? contradictions(owned, `/kit/${index}/filter_samples`) : [],
    ),
  ],
};

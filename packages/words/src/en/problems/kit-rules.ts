import type { KitRuleCode, KitRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { repeatedId } from "./rule-parts.js";

/** What is wrong between the parts of a request for a kit. */
export const kitRules: Texts<KitRuleParameters, FieldText> = {
  dive_ids_unique: repeatedId,
  piece_ids_unique: repeatedId,
  kit_dive_field: ({ name }) =>
    fieldText(
      `A dive has no ${name} here.`,
      "filters, video lights and rings among the pieces; language, units and expect_model_version beside the dives",
    ),
  piece_field: ({ name, item, fields }) =>
    fieldText(`${name} does not go with item ${item}.`, fields.join(", ")),
  piece_incomplete: ({ item, missing }) =>
    fieldText(`For item ${item} you left out ${missing.join(", ")}.`, missing.join(", ")),
};

/** The same for programs that look a code up. */
export const kitRuleMeanings: Readonly<Record<KitRuleCode, string>> = {
  dive_ids_unique: "Two dives have the same `id`.",
  piece_ids_unique: "Two pieces have the same `id`.",
  kit_dive_field:
    "A dive names a filter, a video light or a ring, which are pieces, or a field that stands beside the dives.",
  piece_field: "A piece has a field that goes with another `item`.",
  piece_incomplete: "A piece lacks a field without which nobody knows what it is.",
};

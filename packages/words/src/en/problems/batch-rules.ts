import type { BatchRuleCode, BatchRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { repeatedId } from "./rule-parts.js";

const ways = "either items, or operation, scene and vary";

/** What is wrong between the parts of a batch. */
export const batchRules: Texts<BatchRuleParameters, FieldText> = {
  batch_one_way: ({ name }) =>
    name === ""
      ? fieldText("The batch names no scenes.", ways)
      : fieldText(`${name} does not go with items.`, ways),
  batch_ids_unique: repeatedId,
  vary_names_a_field: () =>
    fieldText("This entry names no field.", "at least one field of the scene, with the list of its values"),
  vary_lengths_equal: ({ name, length, first, wanted }) =>
    fieldText(
      `${name} has ${length} ${length === 1 ? "value" : "values"}, ${first} has ${wanted}.`,
      `${wanted}: fields of one entry go together, value by value`,
    ),
  vary_field_once: ({ name, first }) =>
    fieldText(`An earlier entry varies ${name} already: ${first}.`, "each field in one entry"),
  batch_size: ({ scenes, most }) =>
    fieldText(
      `This makes ${scenes} scenes.`,
      `up to ${most}: the numbers of values of all entries, multiplied`,
    ),
};

/** The same for programs that look a code up. */
export const batchRuleMeanings: Readonly<Record<BatchRuleCode, string>> = {
  batch_one_way:
    "A batch has either `items`, or `operation`, `scene` and `vary`: it has neither, or one that goes with the other.",
  batch_ids_unique: "Two items of a batch have the same `id`, so that nobody could tell their lines apart.",
  vary_names_a_field: "An entry of `vary` names no field.",
  vary_lengths_equal: "Fields of one entry of `vary` go together, and do not have equally many values.",
  vary_field_once: "Two entries of `vary` name the same field.",
  batch_size: "The entries of `vary` make more scenes than a batch takes.",
};

import type { KitRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { repeatedId } from "./rule-parts.js";

/** Was zwischen den Teilen einer Anfrage nach einer Ausrüstung nicht stimmt. */
export const kitRules: Texts<KitRuleParameters, FieldText> = {
  dive_ids_unique: repeatedId,
  piece_ids_unique: repeatedId,
  kit_dive_field: ({ name }) =>
    fieldText(
      `Ein Tauchgang hat hier kein ${name}.`,
      "Filter, Videolampen und Ringe unter den Teilen (pieces); Sprache, Einheiten und expect_model_version neben den Tauchgängen",
    ),
  piece_field: ({ name, item, fields }) =>
    fieldText(`${name} passt nicht zu item ${item}.`, fields.join(", ")),
  piece_incomplete: ({ item, missing }) =>
    fieldText(`Zu item ${item} fehlt ${missing.join(", ")}.`, missing.join(", ")),
};

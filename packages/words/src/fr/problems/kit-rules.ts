import type { KitRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { repeatedId } from "./rule-parts.js";

/** Ce qui ne va pas entre les parties d’une demande d’équipement. */
export const kitRules: Texts<KitRuleParameters, FieldText> = {
  dive_ids_unique: repeatedId,
  piece_ids_unique: repeatedId,
  kit_dive_field: ({ name }) =>
    fieldText(
      `Une plongée n’a pas de champ ${name} ici.`,
      "filtres, phares vidéo et bagues parmi les pièces (pieces) ; langue, unités et expect_model_version à côté des plongées",
    ),
  piece_field: ({ name, item, fields }) =>
    fieldText(`${name} ne va pas avec item ${item}.`, fields.join(", ")),
  piece_incomplete: ({ item, missing }) =>
    fieldText(`Pour item ${item}, il manque ${missing.join(", ")}.`, missing.join(", ")),
};

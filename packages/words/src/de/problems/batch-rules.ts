import type { BatchRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { repeatedId } from "./rule-parts.js";

const ways = "entweder items oder operation, scene und vary";

/** Was zwischen den Teilen eines Stapels nicht stimmt. */
export const batchRules: Texts<BatchRuleParameters, FieldText> = {
  batch_one_way: ({ name }) =>
    name === ""
      ? fieldText("Der Stapel nennt keine Szenen.", ways)
      : fieldText(`${name} passt nicht zu items.`, ways),
  batch_ids_unique: repeatedId,
  vary_names_a_field: () =>
    fieldText("Dieser Eintrag nennt kein Feld.", "mindestens ein Feld der Szene mit der Liste seiner Werte"),
  vary_lengths_equal: ({ name, length, first, wanted }) =>
    fieldText(
      `${name} hat ${length} ${length === 1 ? "Wert" : "Werte"}, ${first} hat ${wanted}.`,
      `${wanted}: Felder eines Eintrags gehören zusammen, Wert für Wert`,
    ),
  vary_field_once: ({ name, first }) =>
    fieldText(`Ein früherer Eintrag verändert ${name} schon: ${first}.`, "jedes Feld in nur einem Eintrag"),
  batch_size: ({ scenes, most }) =>
    fieldText(
      `Das ergibt ${scenes} Szenen.`,
      `bis zu ${most}: die Anzahlen der Werte aller Einträge, miteinander multipliziert`,
    ),
};

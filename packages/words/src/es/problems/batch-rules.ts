import type { BatchRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { repeatedId } from "./rule-parts.js";

const ways = "o bien items, o bien operation, scene y vary";

/** Qué no encaja entre las partes de un lote. */
export const batchRules: Texts<BatchRuleParameters, FieldText> = {
  batch_one_way: ({ name }) =>
    name === ""
      ? fieldText("El lote no nombra ninguna escena.", ways)
      : fieldText(`${name} no va junto con items.`, ways),
  batch_ids_unique: repeatedId,
  vary_names_a_field: () =>
    fieldText(
      "Esta entrada no nombra ningún campo.",
      "al menos un campo de la escena, con la lista de sus valores",
    ),
  vary_lengths_equal: ({ name, length, first, wanted }) =>
    fieldText(
      `${name} tiene ${length} ${length === 1 ? "valor" : "valores"} y ${first} tiene ${wanted}.`,
      `${wanted}: los campos de una misma entrada van juntos, valor por valor`,
    ),
  vary_field_once: ({ name, first }) =>
    fieldText(`Una entrada anterior ya varía ${name}: ${first}.`, "cada campo en una sola entrada"),
  batch_size: ({ scenes, most }) =>
    fieldText(
      `Salen ${scenes} escenas.`,
      `hasta ${most}: el producto de los números de valores de todas las entradas`,
    ),
};

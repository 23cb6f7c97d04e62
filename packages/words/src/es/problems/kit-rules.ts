import type { KitRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { repeatedId } from "./rule-parts.js";

/** Lo que falla entre las partes de una petición de equipo. */
export const kitRules: Texts<KitRuleParameters, FieldText> = {
  dive_ids_unique: repeatedId,
  piece_ids_unique: repeatedId,
  kit_dive_field: ({ name }) =>
    fieldText(
      `Una inmersión no lleva aquí ${name}.`,
      "filtros, focos y anillos entre las piezas (pieces); idioma, unidades y expect_model_version junto a las inmersiones",
    ),
  piece_field: ({ name, item, fields }) => fieldText(`${name} no va con item ${item}.`, fields.join(", ")),
  piece_incomplete: ({ item, missing }) =>
    fieldText(
      `Para item ${item} ${missing.length === 1 ? "falta" : "faltan"} ${missing.join(", ")}.`,
      missing.join(", "),
    ),
};

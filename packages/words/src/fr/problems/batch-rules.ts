import type { BatchRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { repeatedId } from "./rule-parts.js";

const ways = "soit items, soit operation, scene et vary";

/** Ce qui ne va pas entre les parties d’un lot. */
export const batchRules: Texts<BatchRuleParameters, FieldText> = {
  batch_one_way: ({ name }) =>
    name === ""
      ? fieldText("Le lot ne donne aucune scène.", ways)
      : fieldText(`${name} ne va pas avec items.`, ways),
  batch_ids_unique: repeatedId,
  vary_names_a_field: () =>
    fieldText(
      "Cette entrée ne nomme aucun champ.",
      "au moins un champ de la scène, avec la liste de ses valeurs",
    ),
  vary_lengths_equal: ({ name, length, first, wanted }) =>
    fieldText(
      `${name} a ${length} ${length === 1 ? "valeur" : "valeurs"}, ${first} en a ${wanted}.`,
      `${wanted} : les champs d’une même entrée vont ensemble, valeur par valeur`,
    ),
  vary_field_once: ({ name, first }) =>
    fieldText(
      `Une entrée précédente fait déjà varier ${name} : ${first}.`,
      "chaque champ dans une seule entrée",
    ),
  batch_size: ({ scenes, most }) =>
    fieldText(
      `Cela donne ${scenes} scènes.`,
      `jusqu’à ${most} : le produit des nombres de valeurs de toutes les entrées`,
    ),
};

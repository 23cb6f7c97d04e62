import type { FieldsErrors, QueryDetails, QueryErrors } from "../../problems/query-texts.js";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";

const badEscape = fieldText("Un % n’est pas suivi de deux chiffres hexadécimaux.", "%25 pour %");

/** Ce qui ne va pas dans un paramètre de l’URL. */
export const queryTexts: Texts<QueryErrors, FieldText> = {
  malformed_escape: () => badEscape,
  repeated_parameter: ({ name }) =>
    fieldText(`${name} est indiqué plusieurs fois.`, `${name} une seule fois`),
  needs_post: () =>
    fieldText(
      "Une liste, et ce qui l’accompagne, n’entre pas dans les paramètres d’une URL.",
      "la même scène comme corps d’un POST",
    ),
  empty_value: ({ name }) =>
    fieldText(`${name} n’a pas de valeur.`, "une valeur, ou pas de paramètre du tout"),
  not_a_number: ({ name }) => fieldText(`${name} n’est pas un nombre décimal.`, "un nombre comme 12 ou 12.5"),
  unknown_field: ({ taken }) => fieldText("Aucun paramètre d’URL ne porte ce nom.", takenTexts[taken]),
};

const takenTexts = {
  none: "aucun paramètre d’URL",
  fields_alone: "seulement fields",
  look_alone: "seulement format, width_px et theme",
};

/** Ce qui ne va pas dans les noms des champs qu’une requête demande. */
export const fieldsTexts: Texts<FieldsErrors, FieldText> = {
  malformed_escape: () => badEscape,
  repeated_parameter: () =>
    fieldText(
      "fields est indiqué plusieurs fois.",
      "fields une seule fois, les noms séparés par des virgules",
    ),
  empty_value: () =>
    fieldText("fields n’a pas de valeur.", "des noms de champs séparés par des virgules, ou brief"),
  wrong_length: ({ length, max_length }) =>
    fieldText(`fields a ${length} caractères.`, `${max_length} au plus`),
  unknown_field: ({ name }) =>
    fieldText(
      name === ""
        ? "Il n’y a pas de nom entre deux virgules."
        : `La réponse n’a pas de champ ${JSON.stringify(name)}.`,
      "des noms de champs de la réponse, ceux d’un autre champ après un point, comme depths.depth_m ; ou brief seul",
    ),
};

/** Pourquoi les paramètres d’une URL sont refusés en bloc. */
export const queryDetails: Texts<QueryDetails, string> = {
  takes_none: ({ method }) => `À ce chemin, ${method} n’accepte aucun paramètre d’URL.`,
  takes_fields_alone: () => "POST n’accepte qu’un paramètre d’URL, fields.",
  takes_look_alone: () => "POST n’accepte que les paramètres d’URL format, width_px et theme.",
  no_such_look: () => "Cela n’existe pas sous la forme que vous demandez.",
  no_such_fields: () => "La réponse n’a pas les champs que vous demandez.",
};

import type { FieldsErrors, QueryDetails, QueryErrors } from "../../problems/query-texts.js";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";

const badEscape = fieldText("A un % no le siguen dos cifras hexadecimales.", "%25 para %");

/** Qué está mal en un parámetro de la cadena de consulta. */
export const queryTexts: Texts<QueryErrors, FieldText> = {
  malformed_escape: () => badEscape,
  repeated_parameter: ({ name }) => fieldText(`${name} aparece más de una vez.`, `${name} una sola vez`),
  needs_post: () =>
    fieldText(
      "Las listas, y los campos que van con ellas, no caben en una cadena de consulta.",
      "la misma escena como cuerpo de un POST",
    ),
  empty_value: ({ name }) => fieldText(`${name} no tiene valor.`, "un valor, o ningún parámetro"),
  not_a_number: ({ name }) =>
    fieldText(`${name} no es un número decimal.`, "un número como 12 o 12.5, con punto"),
  unknown_field: ({ taken }) =>
    fieldText("No existe ningún parámetro de consulta con este nombre.", takenTexts[taken]),
};

const takenTexts = {
  none: "ningún parámetro de consulta",
  fields_alone: "solo fields",
  look_alone: "solo format, width_px y theme",
};

/** Qué está mal en los nombres de los campos que se piden. */
export const fieldsTexts: Texts<FieldsErrors, FieldText> = {
  malformed_escape: () => badEscape,
  repeated_parameter: () =>
    fieldText("fields aparece más de una vez.", "fields una sola vez, con los nombres separados por comas"),
  empty_value: () => fieldText("fields no tiene valor.", "nombres de campos separados por comas, o brief"),
  wrong_length: ({ length, max_length }) =>
    fieldText(`fields tiene ${length} caracteres.`, `como máximo ${max_length}`),
  unknown_field: ({ name }) =>
    fieldText(
      name === ""
        ? "Entre dos comas no hay ningún nombre."
        : `La respuesta no tiene ningún campo ${JSON.stringify(name)}.`,
      "nombres de campos de la respuesta, los de dentro de otro detrás de un punto, como depths.depth_m; o solo brief",
    ),
};

/** Por qué se rechaza una consulta entera. */
export const queryDetails: Texts<QueryDetails, string> = {
  takes_none: ({ method }) => `${method} no admite parámetros de consulta en esta ruta.`,
  takes_fields_alone: () => "POST no admite más parámetro de consulta que fields.",
  takes_look_alone: () => "POST no admite más parámetros de consulta que format, width_px y theme.",
  no_such_look: () => "Esto no se puede hacer en la forma que pide.",
  no_such_fields: () => "La respuesta no tiene los campos que pide.",
};

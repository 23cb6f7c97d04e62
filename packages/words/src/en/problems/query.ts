import type { FieldsErrors, QueryDetails, QueryErrors } from "../../problems/query-texts.js";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";

const badEscape = fieldText("A % is not followed by two hexadecimal digits.", "%25 for %");

/** What is wrong with a parameter of a query string. */
export const queryTexts: Texts<QueryErrors, FieldText> = {
  malformed_escape: () => badEscape,
  repeated_parameter: ({ name }) => fieldText(`${name} appears more than once.`, `${name} once`),
  needs_post: () =>
    fieldText(
      "Lists, and fields that go with them, do not fit into a query string.",
      "the same scene as the body of a POST",
    ),
  empty_value: ({ name }) => fieldText(`${name} has no value.`, "a value, or no parameter at all"),
  not_a_number: ({ name }) => fieldText(`${name} is not a decimal number.`, "a number such as 12 or 12.5"),
  unknown_field: ({ taken }) => fieldText("There is no query parameter of this name.", takenTexts[taken]),
};

const takenTexts = {
  none: "no query parameters",
  fields_alone: "only fields",
  look_alone: "only format, width_px and theme",
};

/** What is wrong with the names of fields that a query asks for. */
export const fieldsTexts: Texts<FieldsErrors, FieldText> = {
  malformed_escape: () => badEscape,
  repeated_parameter: () =>
    fieldText("fields appears more than once.", "fields once, its names between commas"),
  empty_value: () => fieldText("fields has no value.", "names of fields between commas, or brief"),
  wrong_length: ({ length, max_length }) =>
    fieldText(`fields has ${length} characters.`, `at most ${max_length}`),
  unknown_field: ({ name }) =>
    fieldText(
      name === ""
        ? "There is no name between two commas."
        : `The answer has no field ${JSON.stringify(name)}.`,
      "names of the answer's fields, those within another after a dot, such as depths.depth_m; or brief alone",
    ),
};

/** Why a query as a whole is refused. */
export const queryDetails: Texts<QueryDetails, string> = {
  takes_none: ({ method }) => `${method} takes no query parameters at this path.`,
  takes_fields_alone: () => "POST takes only one query parameter, fields.",
  takes_look_alone: () => "POST takes only the query parameters format, width_px and theme.",
  no_such_look: () => "This cannot be made in the form that you ask for.",
  no_such_fields: () => "The answer does not have the fields that you ask for.",
};

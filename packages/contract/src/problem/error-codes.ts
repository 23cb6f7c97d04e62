/** What can be wrong with one field, by the code that its error carries. Cross-field rules add theirs, see `sceneRules` and `mountingRules`. */
export const fieldErrorCodes = {
  unknown_field: "There is no field of this name.",
  repeated_field: "A name stands twice in one object, and only one of its values could be heard.",
  missing_field: "A field that must be there is not.",
  wrong_type: "The value has another JSON type than the field takes.",
  out_of_range: "The number is outside the field's range.",
  not_whole: "The number is not whole.",
  not_an_option: "The word is none of those that the field takes.",
  wrong_length: "The text or list is too short or too long.",
  wrong_form: "The text is not written in the form that the field takes, as a date is.",
  empty_value: "A query parameter has a name but no value.",
  not_a_number: "A query parameter is not a decimal number, written as in JSON.",
  malformed_escape: "A query parameter holds a `%` that no two hexadecimal digits follow.",
  repeated_parameter: "A query parameter is given more than once.",
  needs_post: "A list, and what goes with it, does not fit a query string: send the scene with POST.",
} as const;

export type FieldErrorCode = keyof typeof fieldErrorCodes;

/** Errors of one problem; those beyond it are counted in `detail`. */
export const maxErrors = 50;

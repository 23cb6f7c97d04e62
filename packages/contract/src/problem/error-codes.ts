/** What can be wrong with one field, by the code that its error carries. Cross-field rules add theirs, see `sceneRules` and `mountingRules`. */
export const fieldErrorCodes = [
  "unknown_field",
  "repeated_field",
  "missing_field",
  "wrong_type",
  "out_of_range",
  "not_whole",
  "not_an_option",
  "wrong_length",
  "wrong_form",
  "empty_value",
  "not_a_number",
  "malformed_escape",
  "repeated_parameter",
  "needs_post",
] as const;

export type FieldErrorCode = (typeof fieldErrorCodes)[number];

/** Errors of one problem; those beyond it are counted in `detail`. */
export const maxErrors = 50;

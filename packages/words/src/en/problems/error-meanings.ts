import type { FieldErrorCode, quizErrorCodes } from "@sunfathom/contract";

/** What can be wrong with one field. */
export const fieldErrorMeanings: Readonly<Record<FieldErrorCode, string>> = {
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
};

type QuizErrorCode = (typeof quizErrorCodes)[keyof typeof quizErrorCodes][number];

/** What can be wrong with a request for questions beyond its form. */
export const quizErrorMeanings: Readonly<Record<QuizErrorCode, string>> = {
  closes_at_missing: "A paper that tells its marks after its close does not say when it closes.",
  closes_at_without_effect: "A paper that tells its marks at once has no close.",
  release_without_effect:
    "A package with keys tells its solutions to whoever holds it, so no release can be kept.",
  template_not_at_level: "This kind of question is not asked at this level.",
  closes_at_out_of_range: "The time of the close is over, too far ahead, or no day of the calendar.",
  too_few_questions: "The kinds of question asked for do not hold so many different ones.",
  item_unknown: "The paper has no question of this id.",
  response_malformed: "The answer is not one that this question takes, or its question is answered twice.",
  token_malformed: "This is no token of this service.",
  token_key_unknown: "The key that sealed the token is not, or no longer, in use.",
  token_refused: "The token was altered, or sealed with another key.",
  not_closed_yet: "The paper tells its marks once it has closed.",
  token_expired: "The time of the token is over.",
  questions_changed: "What is right has changed since the paper was made, with the model.",
};

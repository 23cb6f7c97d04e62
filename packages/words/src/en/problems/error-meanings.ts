import type { FieldErrorCode, quizErrorCodes } from "@sunfathom/contract";

/** What can be wrong with one field. */
export const fieldErrorMeanings: Readonly<Record<FieldErrorCode, string>> = {
  unknown_field: "There is no field of this name.",
  repeated_field: "A name appears twice in one object, so only one of its values could count.",
  missing_field: "A required field is missing.",
  wrong_type: "The value has the wrong JSON type for the field.",
  out_of_range: "The number is outside the field's range.",
  not_whole: "The number is not whole.",
  not_an_option: "The field does not take this word.",
  wrong_length: "The text or list is too short or too long.",
  wrong_form: "The text is not in the form that the field takes, such as a date.",
  empty_value: "A query parameter has a name but no value.",
  not_a_number: "A query parameter is not a decimal number as JSON writes it.",
  malformed_escape: "A query parameter has a `%` without two hexadecimal digits after it.",
  repeated_parameter: "A query parameter appears more than once.",
  needs_post:
    "Lists, and fields that go with them, do not fit into a query string: send the scene with POST.",
};

type QuizErrorCode = (typeof quizErrorCodes)[keyof typeof quizErrorCodes][number];

/** What can be wrong with a request for questions beyond its form. */
export const quizErrorMeanings: Readonly<Record<QuizErrorCode, string>> = {
  closes_at_missing: "The paper gives its marks after it closes, but the request does not say when that is.",
  closes_at_without_effect: "A paper that gives its marks at once has no closing time.",
  release_without_effect:
    "Anyone who holds a package with keys has its solutions, so a release has no effect.",
  version_without_effect: "Only a QTI package has a version of that standard.",
  practice_needs_keys:
    "A practice package marks on its own, so it holds the keys, and the request does not say that it may.",
  template_not_at_level: "This level does not have this kind of question.",
  closes_at_out_of_range: "The closing time is in the past, too far ahead, or not a day of the calendar.",
  too_few_questions: "There are not that many different questions of the kinds that you asked for.",
  item_unknown: "The paper has no question with this id.",
  response_malformed: "The question does not take such an answer, or the request answers it twice.",
  token_malformed: "This is not a token of this service.",
  token_key_unknown: "The key that sealed the token is not in use, or no longer.",
  token_refused: "The token was altered, or sealed with another key.",
  not_closed_yet: "The paper gives its marks once it has closed.",
  token_expired: "The token has expired.",
  questions_changed: "The model has changed since the paper was made, and with it the right answers.",
};

import type { FieldText, Texts } from "../../problems/texts.js";
import type { QuizRefusals } from "../../quiz/refusals.js";

/** Why the quiz refuses a request. */
export const quizRefusals: Texts<QuizRefusals, FieldText> = {
  count_out_of_range: ({ most }) => ({
    message: `A paper has 1 to ${most} questions.`,
    allowed: `a whole number, 1 to ${most}`,
  }),
  template_unknown: ({ template }) => ({
    message: `There is no template ${JSON.stringify(template)}.`,
    allowed: "a kind of question that the description lists",
  }),
  template_not_at_level: ({ template, levels }) => ({
    message: `${template} is only for these levels: ${levels.join(", ")}.`,
    allowed: "kinds of question that this level has",
  }),
  too_few_questions: ({ found }) => ({
    message: `These templates have only ${found} more questions at this level. Ask for fewer, or for more templates or topics.`,
    allowed: "fewer questions, or more kinds of question, or all of them without `templates`",
  }),
  response_malformed: (p) => ({
    message: malformed(p),
    allowed: "one answer to a question, in the form that its interaction takes, with ids that it has",
  }),
  item_unknown: ({ item }) => ({
    message: `The paper has no question ${JSON.stringify(item)}.`,
    allowed: "ids of the paper's questions",
  }),
  token_malformed: () => ofToken("This is not a token of this service."),
  token_key_unknown: () => ofToken("The key of this token is not in use, or no longer."),
  token_refused: () => ofToken("This token was altered, or sealed with another key."),
  token_expired: ({ expired_at }) => ({
    message: `This token expired at ${expired_at}.`,
    allowed: "a token that has not expired",
  }),
  questions_changed: ({ model_version }) => ({
    message: `The questions were made with model version ${model_version}, and would come out differently today. Ask for a new paper.`,
    allowed: "a token of a paper made today",
  }),
  closes_at_missing: () => ({
    message: "A paper with release after_close needs a closing time.",
    allowed: "the time at which the paper closes (RFC 3339)",
  }),
  closes_at_without_effect: () => ({
    message: "Only a paper with release after_close has a closing time.",
    allowed: "no `closes_at`, or `release` `after_close` with it",
  }),
  closes_at_out_of_range: ({ case: what, most_days }) => ({
    message: {
      past: "The paper would be closed already.",
      no_such_day: "That month does not have this day.",
      too_far_ahead: `A paper can stay open for ${most_days} days at most.`,
    }[what],
    allowed: `a time in the future, at most ${most_days} days ahead`,
  }),
  release_without_effect: () => ({
    message: "A package with keys gives its solutions to anyone who holds it.",
    allowed: "a package without keys, or neither `release` nor `closes_at`",
  }),
  version_without_effect: () => ({
    message: "Only a package with `format` `qti` has a version of that standard.",
    allowed: "no `version`, or `format` `qti`",
  }),
  practice_needs_keys: () => ({
    message:
      "A practice package marks answers inside, so it holds the keys: say that it may, with `with_keys` `true`.",
    allowed: "only `true`, which needs the instructor's key",
  }),
  not_closed_yet: ({ closes_at }) => ({
    message: `The answers fit the paper. It closes at ${closes_at}: send them again then, as the service stores nothing.`,
    allowed: "answers to a paper that has closed, or the instructor's key",
  }),
};

const ofToken = (message: string): FieldText => ({
  message,
  allowed: "a token as the service gave it with the paper",
});

function malformed(p: QuizRefusals["response_malformed"]): string {
  switch (p.case) {
    case "other_field":
      return `This question is answered with ${p.field}, not with ${p.other}.`;
    case "no_such_entry":
      return `This question has no entry ${JSON.stringify(p.entry)}.`;
    case "entry_repeated":
      return "You can name each entry once.";
    case "too_many_chosen":
      return `You can choose at most ${p.most} here.`;
    case "not_a_number":
      return "The answer must be a finite number.";
    case "number_ambiguous":
      return `${JSON.stringify(p.typed)} could mean two numbers. Write thousands without a separator, and do not write exactly three decimals.`;
    case "other_unit":
      return p.unit === ""
        ? `${JSON.stringify(p.typed)} has a unit, but the question asks for a bare number.`
        : `${JSON.stringify(p.typed)} has a different unit: answer in ${p.unit}, or without a unit.`;
    case "order_incomplete":
      return "Put every entry in the order.";
    case "answered_twice":
      return `You answered question ${p.item} twice.`;
  }
}

import { problem } from "@sunfathom/answers";
import type { ProblemCode } from "@sunfathom/contract";
import { LONGEST_OPEN_DAYS, QuizProblem, type QuizProblemCode } from "@sunfathom/quiz";
import type { FastifyReply } from "fastify";
import { AlreadyAnswered } from "../../compute/computing.js";
import { sendProblem } from "../../http/send-problem.js";

const token = "a token as the service gave it with the paper";

/** The problem that each refusal of the quiz comes as, and what is allowed in its place. */
const kinds: Readonly<Record<QuizProblemCode, { code: ProblemCode; allowed: string }>> = {
  count_out_of_range: { code: "invalid_request", allowed: "a whole number, 1 to 200" },
  template_unknown: { code: "invalid_request", allowed: "a kind of question that the description lists" },
  template_not_at_level: { code: "paper_not_possible", allowed: "kinds of question that this level has" },
  closes_at_missing: { code: "invalid_request", allowed: "the time at which the paper closes (RFC 3339)" },
  closes_at_without_effect: {
    code: "invalid_request",
    allowed: "no `closes_at`, or `release` `after_close` with it",
  },
  closes_at_out_of_range: {
    code: "paper_not_possible",
    allowed: `a time to come, at most ${LONGEST_OPEN_DAYS} days ahead`,
  },
  release_without_effect: {
    code: "invalid_request",
    allowed: "a package without keys, or neither `release` nor `closes_at`",
  },
  not_closed_yet: {
    code: "marks_held_back",
    allowed: "answers to a paper that has closed, or the instructor's key",
  },
  too_few_questions: {
    code: "paper_not_possible",
    allowed: "fewer questions, or more kinds of question, or all of them without `templates`",
  },
  item_unknown: { code: "responses_do_not_fit", allowed: "ids of the paper's questions" },
  response_malformed: {
    code: "responses_do_not_fit",
    allowed: "one answer to a question, in the form that its interaction takes, with ids that it has",
  },
  token_malformed: { code: "token_refused", allowed: token },
  token_key_unknown: { code: "token_refused", allowed: token },
  token_refused: { code: "token_refused", allowed: token },
  token_expired: { code: "token_expired", allowed: "a token that has not expired" },
  questions_changed: { code: "questions_changed", allowed: "a token of a paper that is made today" },
};

/** Answers with what the quiz refused. @throws the error where it is none of the quiz's refusals */
export function sendQuizProblem(reply: FastifyReply, error: unknown): FastifyReply {
  if (error instanceof AlreadyAnswered) return reply;
  if (!(error instanceof QuizProblem)) throw error;
  const { code, allowed } = kinds[error.code];
  const pointer = `/${error.field ?? ""}`;
  return sendProblem(
    reply,
    problem(code, `${pointer}: ${error.message}`, [
      { pointer, code: error.code, message: error.message, allowed },
    ]),
  );
}

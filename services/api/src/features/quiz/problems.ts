import { problem, readable } from "@sunfathom/answers";
import type { ProblemCode } from "@sunfathom/contract";
import { QuizProblem, type QuizProblemCode, type QuizRefusal } from "@sunfathom/quiz";
import type { FieldText, ProblemTexts, QuizRefusals } from "@sunfathom/words";
import type { FastifyReply } from "fastify";
import { AlreadyAnswered } from "../../compute/computing.js";
import { tongueFor } from "../../http/asked/language.js";
import { sendProblem } from "../../http/sent/send-problem.js";

/** The problem that each refusal of the quiz comes as. */
const kinds: Readonly<Record<QuizProblemCode, ProblemCode>> = {
  count_out_of_range: "invalid_request",
  template_unknown: "invalid_request",
  template_not_at_level: "paper_not_possible",
  closes_at_missing: "invalid_request",
  closes_at_without_effect: "invalid_request",
  closes_at_out_of_range: "paper_not_possible",
  release_without_effect: "invalid_request",
  version_without_effect: "invalid_request",
  practice_needs_keys: "invalid_request",
  not_closed_yet: "marks_held_back",
  too_few_questions: "paper_not_possible",
  item_unknown: "responses_do_not_fit",
  response_malformed: "responses_do_not_fit",
  token_malformed: "token_refused",
  token_key_unknown: "token_refused",
  token_refused: "token_refused",
  token_expired: "token_expired",
  questions_changed: "questions_changed",
};

/** Answers with what the quiz refused. @throws the error where it is none of the quiz's refusals */
export function sendQuizProblem(reply: FastifyReply, error: unknown): FastifyReply {
  if (error instanceof AlreadyAnswered) return reply;
  if (!(error instanceof QuizProblem)) throw error;
  const { code, parameters } = error.refusal;
  const { problems } = tongueFor(reply.request);
  const { message, allowed } = textOf(error.refusal, problems);
  const pointer = `/${error.field ?? ""}`;
  const found = { pointer, code, message, allowed, parameters };
  return sendProblem(reply, problem(kinds[code], problems, `${pointer}: ${message}`, [found]));
}

function textOf<Code extends QuizProblemCode>(
  { code, parameters }: QuizRefusal & { code: Code; parameters: QuizRefusals[Code] },
  { quiz }: ProblemTexts,
): FieldText {
  return { ...quiz[code](readable(parameters)), allowed: quiz[code](parameters).allowed };
}

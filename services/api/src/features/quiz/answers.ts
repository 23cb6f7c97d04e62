import { checkRequest, shapeOf, toJson } from "@sunfathom/answers";
import type { QuizAnswersRequest } from "@sunfathom/contract";
import { cautionsOf, checkResponses, gradePaper, isBlank, openPaper, QuizProblem } from "@sunfathom/quiz";
import type { FastifyInstance } from "fastify";
import type { Computing } from "../../compute/computing.js";
import { heed, tongueFor } from "../../http/asked/language.js";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import { sendJson } from "../../http/sent/send-json.js";
import { sendRefusal } from "../../http/sent/send-problem.js";
import { bears, challenge } from "./bearer.js";
import { markAnswers } from "./description.js";
import { sendQuizProblem } from "./problems.js";
import type { Sealing } from "./sealing.js";

/** Marks, from the token alone: nothing is stored, so a paper can be marked as often as its token holds. */
export function quizAnswersRoute(
  app: FastifyInstance,
  { keyring }: Sealing,
  instructorKey: string | undefined,
  computing: Computing,
): void {
  const shape = shapeOf("QuizMarks");
  const options = {
    schema: markAnswers,
    config: { refusesBodyAs: "invalid_request", reader: { component: "QuizAnswersRequest" } } as const,
    onRequest: refuseQuery,
  };
  app.post("/v1/quiz-answers", options, async (request, reply) => {
    const checked = checkRequest<QuizAnswersRequest>(
      "QuizAnswersRequest",
      request.body,
      tongueFor(request).problems,
    );
    if ("problem" in checked) {
      computing.refuse(request, reply, checked.problem);
      return reply;
    }
    const { token, responses } = checked.request;
    const { authorization } = request.headers;
    const byInstructor = instructorKey !== undefined && bears(authorization, instructorKey);
    try {
      const opened = await openPaper(token, {
        keyring,
        now_s: Date.now() / 1000,
        again: computing.papers(request, reply).again,
      });
      const { language } = opened.request;
      // A platform that says nothing of languages has what is wrong with an answer said as the paper was.
      if (request.headers["accept-language"] === undefined) heed(request, language);
      if (opened.held_until !== undefined && !byInstructor) {
        checkResponses(opened.items, responses, language);
        if (instructorKey !== undefined && authorization !== undefined) {
          reply.header("www-authenticate", challenge(authorization));
          return sendRefusal(reply, { because: "instructors_key_wrong" });
        }
        throw heldUntil(opened.held_until);
      }
      const marks = gradePaper(opened.items, responses, { language, blanks: byInstructor });
      const answered = new Set(responses.filter((response) => !isBlank(response)).map(({ item }) => item));
      const unanswered = opened.items.map(({ id }) => id).filter((id) => !answered.has(id));
      const { items, model_version } = opened;
      const body = shape({
        ...marks,
        unanswered,
        cautions: cautionsOf(items, language),
        model_version,
      }) as object;
      // Marks are said as the paper was, whatever this request likes best.
      reply.header("content-language", language);
      return sendJson(reply.header("cache-control", "no-store"), toJson(body));
    } catch (error) {
      return sendQuizProblem(reply, error);
    }
  });
}

/** No score either: with one, whoever asks again and again finds the key of a choice in as many tries as it has options. */
const heldUntil = (time: string) =>
  new QuizProblem({ code: "not_closed_yet", parameters: { closes_at: time } }, "token");

import { checkRequest, shapeOf, toJson } from "@sunfathom/answers";
import type { QuizAnswersRequest } from "@sunfathom/contract";
import { gradePaper, openPaper } from "@sunfathom/quiz";
import type { FastifyInstance } from "fastify";
import { refuseQuery } from "../../http/refuse-query.js";
import { sendJson } from "../../http/send-json.js";
import { sendProblem } from "../../http/send-problem.js";
import { markAnswers } from "../../openapi/quiz.js";
import { sendQuizProblem } from "./problems.js";
import type { Sealing } from "./sealing.js";

/** Marks, from the token alone: nothing is stored, so a paper can be marked as often as its token holds. */
export function quizAnswersRoute(app: FastifyInstance, { keyring }: Sealing): void {
  const shape = shapeOf("QuizMarks");
  const options = {
    schema: markAnswers,
    config: { refusesBodyAs: "invalid_request" as const },
    onRequest: refuseQuery,
  };
  app.post("/v1/quiz-answers", options, async (request, reply) => {
    const checked = checkRequest<QuizAnswersRequest>("QuizAnswersRequest", request.body);
    if ("problem" in checked) return sendProblem(reply, checked.problem);
    const { token, responses } = checked.request;
    try {
      const opened = await openPaper(token, { keyring, now_s: Date.now() / 1000 });
      const marks = gradePaper(opened.items, responses, opened.request.language);
      const answered = new Set(responses.map(({ item }) => item));
      const unanswered = opened.items.map(({ id }) => id).filter((id) => !answered.has(id));
      const body = shape({ ...marks, unanswered, model_version: opened.model_version }) as object;
      return sendJson(reply.header("cache-control", "no-store"), toJson(body));
    } catch (error) {
      return sendQuizProblem(reply, error);
    }
  });
}

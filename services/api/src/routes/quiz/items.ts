import { checkRequest, shapeOf, toJson } from "@sunfathom/answers";
import type { QuizItemsRequest } from "@sunfathom/contract";
import { cautionsOf, publicItem } from "@sunfathom/quiz";
import type { FastifyInstance } from "fastify";
import type { Computing } from "../../compute/computing.js";
import { tongueFor } from "../../http/language.js";
import { refuseQuery } from "../../http/refuse-query.js";
import { sendJson } from "../../http/send-json.js";
import { drawItems, linkToMarking } from "../../openapi/quiz.js";
import { mayAsk } from "./instructor.js";
import { drawSealed } from "./paper.js";
import { sendQuizProblem } from "./problems.js";
import type { Sealing } from "./sealing.js";

/** Papers without their answers, and a token that carries them. */
export function quizItemsRoute(
  app: FastifyInstance,
  sealing: Sealing,
  instructorKey: string | undefined,
  computing: Computing,
): void {
  const shape = shapeOf("QuizPaper");
  const options = {
    schema: drawItems,
    links: linkToMarking,
    config: { refusesBodyAs: "invalid_request", reader: { component: "QuizItemsRequest" } } as const,
    onRequest: refuseQuery,
  };
  app.post("/v1/quiz-items", options, async (request, reply) => {
    const checked = checkRequest<QuizItemsRequest>(
      "QuizItemsRequest",
      request.body,
      tongueFor(request).problems,
    );
    if ("problem" in checked) {
      computing.refuse(request, reply, checked.problem);
      return reply;
    }
    if (!mayAsk(request, reply, checked.request, instructorKey)) return reply;
    try {
      const { paper, sealed } = await drawSealed(
        { ...checked.request, instructorKey },
        sealing,
        computing.papers(request, reply).make,
      );
      const body = shape({
        items: paper.items.map(publicItem),
        cautions: cautionsOf(paper.items),
        ...sealed,
      }) as object;
      return sendJson(reply.header("cache-control", "no-store"), toJson(body));
    } catch (error) {
      return sendQuizProblem(reply, error);
    }
  });
}

import { checkRequest, shapeOf, toJson } from "@sunfathom/answers";
import type { QuizItemsRequest } from "@sunfathom/contract";
import { cautionsOf, publicItem } from "@sunfathom/quiz";
import type { FastifyInstance } from "fastify";
import type { Computing } from "../../compute/computing.js";
import { quizLanguageFor, tellLanguage, tongueFor } from "../../http/asked/language.js";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import { sendJson } from "../../http/sent/send-json.js";
import { drawItems, linkToMarking } from "./description.js";
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
    const language = quizLanguageFor(request, checked.request.language);
    try {
      const { paper, sealed } = await drawSealed(
        { ...checked.request, language, instructorKey },
        sealing,
        computing.papers(request, reply).make,
      );
      const body = shape({
        items: paper.items.map(publicItem),
        cautions: cautionsOf(paper.items, language),
        ...sealed,
      }) as object;
      return sendJson(tellLanguage(reply, language).header("cache-control", "no-store"), toJson(body));
    } catch (error) {
      return sendQuizProblem(reply, error);
    }
  });
}

import { checkRequest, toJson } from "@sunfathom/answers";
import type { QuizPackageRequest } from "@sunfathom/contract";
import { type PackageFile, QuizProblem } from "@sunfathom/quiz";
import type { FastifyInstance } from "fastify";
import type { Computing } from "../../compute/computing.js";
import { tongueFor } from "../../http/language.js";
import { refuseQuery } from "../../http/refuse-query.js";
import { packItems } from "../../openapi/quiz.js";
import { mayAsk } from "./instructor.js";
import { type ByInstructor, drawPaper, drawSealed, type Make, type Paper } from "./paper.js";
import { sendQuizProblem } from "./problems.js";
import type { Sealing } from "./sealing.js";

/** Packages of questions for learning platforms: with keys for instructors, without for anybody. */
export function quizPackagesRoute(
  app: FastifyInstance,
  sealing: Sealing,
  instructorKey: string | undefined,
  computing: Computing,
): void {
  const options = {
    schema: packItems,
    config: {
      refusesBodyAs: "invalid_request",
      answersIn: "application/zip",
      reader: { component: "QuizPackageRequest" },
    } as const,
    onRequest: refuseQuery,
  };
  app.post("/v1/quiz-packages", options, async (request, reply) => {
    const checked = checkRequest<QuizPackageRequest>(
      "QuizPackageRequest",
      request.body,
      tongueFor(request).problems,
    );
    if ("problem" in checked) {
      computing.refuse(request, reply, checked.problem);
      return reply;
    }
    const { version = "3.0", language = "en", title, with_keys = false } = checked.request;
    if (!mayAsk(request, reply, checked.request, instructorKey)) return reply;
    try {
      const { make, pack } = computing.papers(request, reply);
      const { paper, beside } = await (with_keys ? keyed : keyless)(
        { ...checked.request, instructorKey },
        sealing,
        make,
      );
      const zip = await pack(paper.items, { version, language, title, keys: with_keys, beside });
      return reply
        .header("content-type", "application/zip")
        .header("content-disposition", 'attachment; filename="quiz.zip"')
        .header("cache-control", "no-store")
        .send(Buffer.from(zip.buffer));
    } catch (error) {
      return sendQuizProblem(reply, error);
    }
  });
}

type Wanted = QuizPackageRequest & ByInstructor;

interface Content {
  paper: Paper;
  beside: readonly PackageFile[];
}

async function keyed(asked: Wanted, _: Sealing, make: Make): Promise<Content> {
  const [field] = (["release", "closes_at"] as const).filter((name) => asked[name] !== undefined);
  if (field !== undefined) {
    throw new QuizProblem({ code: "release_without_effect", parameters: {} }, field);
  }
  return { paper: await drawPaper(asked, make), beside: [] };
}

/**
 * A package is handed to learners, so it brings a token only where that opens nothing before the paper has closed: with the
 * token of a practice paper, any answer would have its question's solution told.
 */
async function keyless(asked: Wanted, sealing: Sealing, make: Make): Promise<Content> {
  const { paper, sealed } = await drawSealed(asked, sealing, make);
  const beside = sealed.release === "at_once" ? [] : [{ path: "paper.json", content: toJson(sealed) }];
  return { paper, beside };
}

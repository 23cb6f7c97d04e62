import { checkRequest, toJson } from "@sunfathom/answers";
import type { QuizPackageRequest } from "@sunfathom/contract";
import { type Language, type PackageFile, type Packing, QuizProblem } from "@sunfathom/quiz";
import type { FastifyInstance } from "fastify";
import type { Computing } from "../../compute/computing.js";
import { quizLanguageFor, tellLanguage, tongueFor } from "../../http/asked/language.js";
import { refuseQuery } from "../../http/asked/refuse-query.js";
import { packItems } from "./description.js";
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
    const { title, with_keys = false } = checked.request;
    try {
      refuseOfPractice(checked.request);
    } catch (error) {
      return sendQuizProblem(reply, error);
    }
    if (!mayAsk(request, reply, checked.request, instructorKey)) return reply;
    const language = quizLanguageFor(request, checked.request.language);
    try {
      const { make, pack } = computing.papers(request, reply);
      const { paper, beside } = await (with_keys ? keyed : keyless)(
        { ...checked.request, language, instructorKey },
        sealing,
        make,
      );
      const zip = await pack(paper.items, packingOf(checked.request, { language, title, beside }));
      return tellLanguage(reply, language)
        .header("content-type", "application/zip")
        .header("content-disposition", 'attachment; filename="quiz.zip"')
        .header("cache-control", "no-store")
        .send(Buffer.from(zip.buffer));
    } catch (error) {
      return sendQuizProblem(reply, error);
    }
  });
}

/**
 * What a practice package cannot be: it marks on its own, so it holds the keys, whenever a paper should close.
 * @throws QuizProblem that names the field
 */
function refuseOfPractice({ format, release, closes_at, version, with_keys }: QuizPackageRequest): void {
  if (format !== "scorm_1_2") return;
  if (release !== undefined || closes_at !== undefined) {
    const field = release === undefined ? "closes_at" : "release";
    throw new QuizProblem({ code: "release_without_effect", parameters: {} }, field);
  }
  if (version !== undefined)
    throw new QuizProblem({ code: "version_without_effect", parameters: {} }, "version");
  if (with_keys !== true) throw new QuizProblem({ code: "practice_needs_keys", parameters: {} }, "with_keys");
}

function packingOf(
  { format = "qti", version = "3.0", with_keys = false }: QuizPackageRequest,
  { beside, ...shown }: { language: Language; title: string; beside: readonly PackageFile[] },
): Packing {
  return format === "scorm_1_2"
    ? { format, ...shown }
    : { format, ...shown, version, keys: with_keys, beside };
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

import { createHmac, randomBytes } from "node:crypto";
import type { QuizItemsRequest } from "@sunfathom/contract";
import { closingOf, type Item, type PaperRequest, type PaperToken, sealPaper } from "@sunfathom/quiz";

import type { Sealing } from "./sealing.js";

/** What a paper was made from, and its questions with their keys. */
export interface Paper {
  request: PaperRequest;
  items: Item[];
}

/** The key that seeds of an instructor's own are mixed with. */
export interface ByInstructor {
  instructorKey?: string | undefined;
}
type Asked = Pick<
  QuizItemsRequest,
  "level" | "count" | "templates" | "topics" | "avoid" | "seed" | "units" | "language"
> &
  ByInstructor;
type AskedRelease = Pick<QuizItemsRequest, "release" | "closes_at">;

/** Makes the questions of a paper. @throws QuizProblem where there is none */
export type Make = (request: PaperRequest) => Promise<Item[]>;

/**
 * What questions are drawn from. A seed of the instructor's own is mixed with the key: otherwise whoever guesses the text has the
 * whole paper with its keys from the questions' own code.
 */
function seedOf({ seed, instructorKey }: Asked): string {
  if (seed === undefined || instructorKey === undefined) return randomBytes(16).toString("base64url");
  return createHmac("sha256", instructorKey).update(seed).digest("base64url");
}

/** A paper that nobody has seen before, or the one of a seed. @throws QuizProblem where there is none */
export async function drawPaper(asked: Asked, make: Make): Promise<Paper> {
  const { level, count, templates, topics, avoid, units = "metric", language = "en" } = asked;
  const seed = seedOf(asked);
  const request = {
    seed,
    level,
    count,
    units,
    language,
    ...(templates === undefined ? {} : { templates }),
    ...(topics === undefined ? {} : { topics }),
    ...(avoid === undefined ? {} : { avoid }),
  };
  return { request, items: await make(request) };
}

/** A paper, and its token, which tells marks when it was asked to. @throws QuizProblem where there is no such paper */
export async function drawSealed(
  asked: Asked & AskedRelease,
  sealing: Sealing,
  make: Make,
): Promise<{ paper: Paper; sealed: PaperToken }> {
  const now_s = Date.now() / 1000;
  const closes_s = closingOf(asked, now_s);
  const paper = await drawPaper(asked, make);
  return { paper, sealed: await sealPaper(paper, { ...sealing, now_s, closes_s }) };
}

import { randomBytes } from "node:crypto";
import type { QuizItemsRequest } from "@sunfathom/contract";
import { closingOf, type Item, type PaperRequest, type PaperToken, sealPaper } from "@sunfathom/quiz";

import type { Sealing } from "./sealing.js";

/** What a paper was made from, and its questions with their keys. */
export interface Paper {
  request: PaperRequest;
  items: Item[];
}

type Asked = Pick<QuizItemsRequest, "level" | "count" | "templates" | "units" | "language">;
type AskedRelease = Pick<QuizItemsRequest, "release" | "closes_at">;

/** Makes the questions of a paper. @throws QuizProblem where there is none */
export type Make = (request: PaperRequest) => Promise<Item[]>;

/** A paper that nobody has seen before. @throws QuizProblem where there is none */
export async function drawPaper(
  { level, count, templates, units = "metric", language = "en" }: Asked,
  make: Make,
): Promise<Paper> {
  const seed = randomBytes(16).toString("base64url");
  const request = {
    seed,
    level,
    count,
    units,
    language,
    ...(templates === undefined ? {} : { templates }),
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

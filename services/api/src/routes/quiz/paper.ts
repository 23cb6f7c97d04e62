import { randomBytes } from "node:crypto";
import type { QuizItemsRequest } from "@sunfathom/contract";
import {
  closingOf,
  type Item,
  itemsFor,
  type PaperRequest,
  type PaperToken,
  sealPaper,
} from "@sunfathom/quiz";

import type { Sealing } from "./sealing.js";

/** What a paper was made from, and its questions with their keys. */
export interface Paper {
  request: PaperRequest;
  items: Item[];
}

type Asked = Pick<QuizItemsRequest, "level" | "count" | "templates" | "units" | "language">;
type AskedRelease = Pick<QuizItemsRequest, "release" | "closes_at">;

/** A paper that nobody has seen before. @throws QuizProblem where there is none */
export function drawPaper({ level, count, templates, units = "metric", language = "en" }: Asked): Paper {
  const seed = randomBytes(16).toString("base64url");
  const request = {
    seed,
    level,
    count,
    units,
    language,
    ...(templates === undefined ? {} : { templates }),
  };
  return { request, items: itemsFor(request) };
}

/** A paper, and its token, which tells marks when it was asked to. @throws QuizProblem where there is no such paper */
export async function drawSealed(
  asked: Asked & AskedRelease,
  sealing: Sealing,
): Promise<{ paper: Paper; sealed: PaperToken }> {
  const now_s = Date.now() / 1000;
  const closes_s = closingOf(asked, now_s);
  const paper = drawPaper(asked);
  return { paper, sealed: await sealPaper(paper, { ...sealing, now_s, closes_s }) };
}

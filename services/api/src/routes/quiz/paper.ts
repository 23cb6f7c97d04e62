import { randomBytes } from "node:crypto";
import type { QuizItemsRequest } from "@sunfathom/contract";
import { type Item, itemsFor, type PaperRequest } from "@sunfathom/quiz";

/** What a paper was made from, and its questions with their keys. */
export interface Paper {
  request: PaperRequest;
  items: Item[];
}

type Asked = Pick<QuizItemsRequest, "level" | "count" | "templates" | "units" | "language">;

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

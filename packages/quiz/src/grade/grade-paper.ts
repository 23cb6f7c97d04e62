import type { Item } from "../item/item.js";
import { CATALOGUES, type Language } from "../messages/catalogue.js";
import { QuizProblem } from "../quiz-problem.js";
import { type Grade, type GradeOptions, grade } from "./grade.js";
import { checkResponse, malformed, type Response } from "./response.js";

export interface ItemResponse extends Response {
  /** The question's id. */
  item: string;
}

export interface PaperGrade {
  grades: Grade[];
  /** Sum of the scores, and what could be had. Questions that were not answered count nothing. */
  score: number;
  max_score: number;
}

/**
 * Marks a paper. Only what was answered is marked and told: the rest stays unseen.
 * @throws QuizProblem for a question that the paper does not have or that is answered twice, or a response that does not fit.
 */
export function gradePaper(
  items: readonly Item[],
  responses: readonly ItemResponse[],
  options: GradeOptions = {},
): PaperGrade {
  const grades = eachAnswer(items, responses, (item, response) => grade(item, response, options));
  return { grades, score: grades.reduce((sum, { score }) => sum + score, 0), max_score: items.length };
}

/** Holds answers to a paper without marking them. @throws QuizProblem as `gradePaper` does */
export function checkResponses(
  items: readonly Item[],
  responses: readonly ItemResponse[],
  language: Language = "en",
): void {
  eachAnswer(items, responses, (item, response) => checkResponse(item, response, CATALOGUES[language]));
}

function eachAnswer<Result>(
  items: readonly Item[],
  responses: readonly ItemResponse[],
  answered: (item: Item, response: Response) => Result,
): Result[] {
  const seen = new Set<string>();
  return responses.map(({ item: id, ...response }, i) => {
    const item = items.find((known) => known.id === id);
    const field = `responses/${i}/item`;
    if (!item) throw new QuizProblem({ code: "item_unknown", parameters: { item: id } }, field);
    if (seen.has(id)) throw malformed(field, { case: "answered_twice", item: id });
    seen.add(id);
    try {
      return answered(item, response);
    } catch (error) {
      if (!(error instanceof QuizProblem)) throw error;
      throw new QuizProblem(error.refusal, `responses/${i}/${error.field}`);
    }
  });
}

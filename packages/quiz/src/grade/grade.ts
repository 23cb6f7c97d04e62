import type { Item } from "../item/item.js";
import { CATALOGUES, type Language } from "../messages/catalogue.js";
import { type Grade, gradeWith } from "./grade-with.js";
import type { Response } from "./response.js";

export type { Grade, Remark } from "./grade-with.js";

export interface GradeOptions {
  language?: Language;
  /** Whether blanks bring feedback and solution too, as they do to an instructor. */
  blanks?: boolean;
}

/** Marks one answer in a language, see `gradeWith`. @throws QuizProblem for a response that does not fit the question. */
export function grade(
  item: Item,
  response: Response,
  { language = "en", blanks = false }: GradeOptions = {},
): Grade {
  const { common, thousands } = CATALOGUES[language];
  return gradeWith({ ...common, thousands }, item, response, { blanks });
}

/**
 * Answers in the signs of SCORM 1.2 (Run-Time Environment, `cmi.interactions.n`): options and entries are one character each, 0-9 or
 * a-z, with commas between, and the two of a pair have a full stop between them.
 */
import { type GradeWords, gradeWith } from "../../grade/grade-with.js";
import type { Response } from "../../grade/response.js";
import type { Item } from "../../item/item.js";

export interface Reported {
  type: "choice" | "numeric" | "sequencing" | "matching";
  student_response: string;
  pattern: string;
  /** `correct`, `wrong`, or the share that was earned. */
  result: string;
}

const TYPES = {
  single_choice: "choice",
  multiple_choice: "choice",
  numeric: "numeric",
  ordering: "sequencing",
  matching: "matching",
} as const;

/** L1, R2 and B become 1, 2 and b. */
const sign = (id: string): string => id.slice(-1).toLowerCase();

/** Without an exponent, which a decimal of SCORM 1.2 does not have. */
const plain = (value: number): string => (String(value).includes("e") ? value.toFixed(12) : String(value));

function inSigns(response: Response): string {
  const { choices, number, order, pairs = [] } = response;
  if (number !== undefined) return plain(number);
  const listed = choices ?? order;
  if (listed) return listed.map(sign).join();
  return pairs.map(({ left, right }) => `${sign(left)}.${sign(right)}`).join();
}

function rightResponse(item: Item): Response {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return { choices: item.options.filter(({ right }) => right).map(({ id }) => id) };
    case "numeric":
      return { number: item.value };
    case "ordering":
      return { order: item.right_order };
    case "matching":
      return { pairs: item.pairs };
  }
}

export function reported(item: Item, response: Response, words: GradeWords): Reported {
  const { score } = gradeWith(words, item, response);
  return {
    type: TYPES[item.interaction],
    student_response: inSigns(response),
    pattern: inSigns(rightResponse(item)),
    result: score === 1 ? "correct" : score === 0 ? "wrong" : score.toFixed(4),
  };
}

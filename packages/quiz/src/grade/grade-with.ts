/** Marks, with the words that it takes handed in: so that a page may mark which has its own questions and no others. */
import type { MisconceptionId } from "@sunfathom/words";
import type { ChoiceItem, Item, MatchingItem, NumericItem, OrderingItem, Solution } from "../item/item.js";
import type { Catalogue } from "../messages/catalogue.js";
import { orderScore } from "./order-score.js";
import { checkBlank, choicesOf, isBlank, numberOf, orderOf, pairsOf, type Response } from "./response.js";

export interface Remark {
  /** The option or entry that it is about; absent where it is about the whole answer. */
  about?: string;
  misconception?: MisconceptionId;
  text: string;
}

export interface Grade {
  /** The question's id. */
  item: string;
  /** 0 to 1. */
  score: number;
  right: boolean;
  feedback: Remark[];
  /** Absent where nothing was answered: a blank opens no more than an honest answer. */
  solution?: Solution;
}

/** What is said beside what each question brings. Texts alone, without what they were made with. */
export type GradeWords = Pick<
  Catalogue["common"],
  "right" | "wrongNumber" | "partlyRight" | "blank" | "missed"
> &
  Pick<Catalogue, "thousands">;

type Mark = Pick<Grade, "score" | "feedback">;

/**
 * Marks one answer. Single choice and numeric: all or nothing. Multiple choice: right ones chosen less wrong ones chosen, over
 * right ones, not below 0. Ordering: pairs of entries in their right order less those in the wrong one, over all pairs, not
 * below 0. Matching: right pairs over all pairs. A blank earns and tells nothing.
 * @throws QuizProblem for a response that does not fit the question.
 */
export function gradeWith(
  words: GradeWords,
  item: Item,
  response: Response,
  { blanks = false }: { blanks?: boolean } = {},
): Grade {
  if (isBlank(response)) {
    checkBlank(item, response);
    const blank = { item: item.id, score: 0, right: false, feedback: [{ text: words.blank }] };
    return blanks ? { ...blank, solution: item.solution } : blank;
  }
  const { score, feedback } = mark(item, response, words);
  return { item: item.id, score, right: score === 1, feedback, solution: item.solution };
}

function mark(item: Item, response: Response, words: GradeWords): Mark {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return markChoice(item, response, words);
    case "numeric":
      return markNumber(item, response, words);
    case "ordering":
      return markOrder(item, response, words);
    case "matching":
      return markPairs(item, response, words);
  }
}

function markChoice(item: ChoiceItem, response: Response, words: GradeWords): Mark {
  const { interaction, options } = item;
  const chosen = choicesOf(item, response);
  const right = options.filter((o) => o.right);
  const hits = right.filter(({ id }) => chosen.includes(id)).length;
  const misses = chosen.length - hits;
  const feedback: Remark[] = options.flatMap(({ id, right: isRight, feedback: text, misconception }) => {
    if (chosen.includes(id))
      return [{ about: id, text, ...(misconception && !isRight ? { misconception } : {}) }];
    return isRight && interaction === "multiple_choice" ? [{ about: id, text: words.missed }] : [];
  });
  return { score: Math.max(0, (hits - misses) / right.length), feedback };
}

/** Slack for answers typed in decimal: far below any tolerance. */
const SLACK = 1e-9;
const inside = ({ low, high }: { low: number; high: number }, value: number): boolean =>
  value >= low - SLACK && value <= high + SLACK;

function markNumber(item: NumericItem, response: Response, words: GradeWords): Mark {
  const { accepted, anticipated } = item;
  const number = numberOf(item, response, words);
  if (inside(accepted, number)) return { score: 1, feedback: [{ text: words.right }] };
  const known = anticipated.find((wrong) => inside(wrong, number));
  return {
    score: 0,
    feedback: known
      ? [{ text: known.feedback, misconception: known.misconception }]
      : [{ text: words.wrongNumber }],
  };
}

function markOrder(item: OrderingItem, response: Response, words: GradeWords): Mark {
  const { right_order, anticipated } = item;
  const order = orderOf(item, response);
  const score = orderScore(right_order, order);
  if (score === 1) return { score, feedback: [{ text: words.right }] };
  const known = anticipated.find((wrong) => wrong.order.join() === order.join());
  return {
    score,
    feedback: known
      ? [{ text: known.feedback, misconception: known.misconception }]
      : [{ text: words.partlyRight }],
  };
}

function markPairs(item: MatchingItem, response: Response, words: GradeWords): Mark {
  const { pairs, wrong } = item;
  const given = pairsOf(item, response);
  const partner = new Map(given.map((pair) => [pair.left, pair.right]));
  const hits = pairs.filter((pair) => partner.get(pair.left) === pair.right).length;
  const score = hits / pairs.length;
  return {
    score,
    feedback:
      score === 1 ? [{ text: words.right }] : [{ text: wrong.feedback, misconception: wrong.misconception }],
  };
}

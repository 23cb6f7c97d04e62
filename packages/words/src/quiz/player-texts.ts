import type { QuizRefusals } from "./refusals.js";

/**
 * What the player of a practice package says around its questions. Texts travel inside the package, so each is a string; the
 * player puts in what stands in braces.
 */
export interface PlayerTexts {
  /** Stands between whole and decimals. */
  decimalMark: string;
  /** What the package is, before anything else is read. */
  practice: string;
  keysInside: string;
  /** {count} */
  questions: string;
  /** Where no platform takes the result. */
  notConnected: string;
  needsScript: string;
  start: string;
  resume: string;
  /** {n}, {count} */
  question: string;
  /** Before cautions that belong to one question. */
  takeCare: string;
  /** {unit} */
  answerIn: string;
  answerBare: string;
  entries: string;
  howToPlace: string;
  /** {n} */
  place: string;
  /** The choice of nothing. */
  notPlaced: string;
  /** {left}: what a partner is chosen for. */
  partnerOf: string;
  check: string;
  back: string;
  next: string;
  toResults: string;
  /** {score} */
  scoreOfQuestion: string;
  /** {score}, {count}, {percent} */
  scoreOfPaper: string;
  yourAnswer: string;
  solution: string;
  results: string;
  right: string;
  partlyRight: string;
  wrong: string;
  blank: string;
  /** {count} */
  blanksLeft: string;
  finish: string;
  finished: string;
  saved: string;
  notSaved: string;
  /** Why an answer cannot be marked as it is. {typed}, {unit} */
  hints: Readonly<Record<PlayerHint, string>>;
}

/** What a learner can get wrong in the form of an answer; a page takes nothing else that the quiz refuses. */
export type PlayerHint =
  | "not_a_number"
  | "number_ambiguous"
  | "other_unit"
  | "unit_unasked"
  | "order_incomplete";

/** The refusal of the quiz that each hint is, with what stands in braces for what the learner typed. */
export const hintCases = {
  not_a_number: { case: "not_a_number" },
  number_ambiguous: { case: "number_ambiguous", typed: "{typed}" },
  other_unit: { case: "other_unit", typed: "{typed}", unit: "{unit}" },
  unit_unasked: { case: "other_unit", typed: "{typed}", unit: "" },
  order_incomplete: { case: "order_incomplete" },
} as const satisfies Record<PlayerHint, QuizRefusals["response_malformed"]>;

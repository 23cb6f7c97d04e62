/** A question as a template makes it: before shuffling, naming and the checks of fairness. */
import type { MisconceptionId } from "@sunfathom/words";
import type { Basis, Given, Interval, Picture } from "./item.js";

/** The hardest thing that a step of the solution asks for; see `difficultyOf`. */
export type Operation = "recall" | "compare" | "add" | "double" | "multiply" | "judge" | "power";

interface Step {
  text: string;
  operation: Operation;
}

export interface OptionDraft {
  value: number | string;
  text: string;
  right: boolean;
  misconception?: MisconceptionId;
  /** In place of the solution's last step behind the misconception's explanation. */
  feedback?: string;
}

export interface ChoiceDraft {
  interaction: "single_choice" | "multiple_choice";
  options: OptionDraft[];
  /** The model's doubt about a numeric key: no wrong option may lie inside. */
  interval?: Interval;
}

export interface NumericDraft {
  interaction: "numeric";
  value: number;
  unit: string;
  decimals: number;
  /** Half the width of what counts as right, around the value rounded to those decimals. */
  tolerance: number;
  /** Where more is right than that, as where the exact number lies between two that a dial has. */
  accepted?: Interval;
  anticipated: { misconception: MisconceptionId; value: number }[];
}

export interface OrderingDraft {
  interaction: "ordering";
  /** In the right order; `key` names an entry for the anticipated orders. */
  entries: { key: string; text: string }[];
  anticipated: { misconception: MisconceptionId; keys: string[] }[];
}

export interface MatchingDraft {
  interaction: "matching";
  pairs: { left: string; right: string }[];
  /** Right-hand entries without a partner. */
  spare: string[];
  misconception: MisconceptionId;
}

export type AnswerDraft = ChoiceDraft | NumericDraft | OrderingDraft | MatchingDraft;

export interface Draft {
  given: Given;
  stem: string;
  /** Drawn once the question is taken. */
  picture?: () => Picture;
  answer: AnswerDraft;
  /** The last one is the step that wrong answers miss. */
  steps: Step[];
  /** Ids, see `citations`. */
  sources: string[];
  basis: Basis;
}

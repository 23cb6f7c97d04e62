/** A question with its key, as the generator makes it. Field names are those of the wire. */
import type { MisconceptionId } from "@sunfathom/words";

export const LEVELS = ["beginner", "working", "expert"] as const;
export type Level = (typeof LEVELS)[number];

/** `metric_and_imperial` shows feet behind metres. Numeric answers are metric always. */
export type Units = "metric" | "metric_and_imperial";

export const TOPICS = [
  "light",
  "filter",
  "exposure",
  "balance",
  "lamps",
  "grading",
  "mounting",
  "safety",
] as const;
export type Topic = (typeof TOPICS)[number];

/** Where the key comes from: the model, a definition or exact geometry, or the trade's practice without a published source. */
export type Basis = "computed" | "definition" | "common_practice";

export interface Interval {
  low: number;
  high: number;
}

export interface Picture {
  /** A complete SVG document. */
  svg: string;
  /** The same in words. */
  alt: string;
}

/** A wrong answer that was foreseen. */
export interface Wrong {
  misconception: MisconceptionId;
  feedback: string;
}

/** Where a question was found among the draws of its seed: enough to make it again. */
export interface Origin {
  round: number;
  turn: number;
  attempt: number;
}

/** What every question has. */
export interface ItemCommon {
  /** Place in the paper: q1, q2 … */
  id: string;
  /** Names what it asks, in every paper the same: see `fingerprintOf`. */
  fingerprint: string;
  template: string;
  topic: Topic;
  level: Level;
  basis: Basis;
  stem: string;
  picture?: Picture;
  /** Estimated from the question's features, 0 easy to 1 hard (see `difficultyOf`). */
  difficulty: number;
  solution: Solution;
  /** What the question states, for whoever wants to work it out again. */
  given: Given;
  origin: Origin;
}

export type Given = Readonly<Record<string, number | string | readonly string[] | readonly number[]>>;

export interface Solution {
  /** In order, with numbers, units and rounding. */
  steps: string[];
  /** Citations. */
  sources: string[];
}

export interface Choice {
  /** A, B, C … in the order shown. */
  id: string;
  text: string;
  /** The number or word that the text stands for. */
  value: number | string;
  right: boolean;
  misconception?: MisconceptionId;
  feedback: string;
}

export interface ChoiceItem extends ItemCommon {
  interaction: "single_choice" | "multiple_choice";
  options: Choice[];
}

export interface NumericItem extends ItemCommon {
  interaction: "numeric";
  /** Unit of the answer; empty for a bare number. */
  unit: string;
  /** Decimals asked for. */
  decimals: number;
  value: number;
  /** Answers from low to high, both included, are right. */
  accepted: Interval;
  anticipated: (Wrong & Interval)[];
}

export interface Entry {
  id: string;
  text: string;
}

export interface OrderingItem extends ItemCommon {
  interaction: "ordering";
  /** As shown. */
  entries: Entry[];
  right_order: string[];
  anticipated: (Wrong & { order: string[] })[];
}

export interface Pair {
  left: string;
  right: string;
}

export interface MatchingItem extends ItemCommon {
  interaction: "matching";
  left: Entry[];
  /** May hold more entries than have a partner. */
  right: Entry[];
  pairs: Pair[];
  wrong: Wrong;
}

export type Item = ChoiceItem | NumericItem | OrderingItem | MatchingItem;
export type Interaction = Item["interaction"];

/**
 * Where right options shall stand among the others by size and by length. It is drawn once for a question and kept over all its
 * draws, so that no rank is right more often than another, however rarely a rank turns up.
 */
import { Draw } from "../random/draw.js";
import type { AnswerDraft, OptionDraft } from "./draft.js";

export interface Aim {
  /** Of a number among numbers, 0 to below 1. */
  size: number;
  /** Of texts among texts: a seed that says which places, by length, are to be right. */
  length: number;
}

/** A multiple of every number of options that questions have. */
const GRAIN = 60;

export const drawAim = (draw: Draw): Aim => ({
  size: draw.below(GRAIN) / GRAIN,
  length: draw.below(2 ** 32),
});

/** The rank among so many options, 0 for the smallest. */
export const rankOf = (aim: number, count: number): number => Math.floor(aim * count);

/**
 * What is asked of the lengths of options, the best first. Of numbers, whose length goes with their size: `even`, all of one
 * length; `plain`, but for one. Of words both: as aimed, where right and wrong ones differ in length. `loose`: as aimed, where
 * ones of the same length stand in any order.
 */
export const LENGTH_RULES = ["even", "plain", "loose"] as const;
export type LengthRule = (typeof LENGTH_RULES)[number];

/** Whether right options stand among the others by the length of their texts as aimed. */
export function standsByLength(answer: AnswerDraft, { length }: Aim, rule: LengthRule): boolean {
  if (answer.interaction !== "single_choice" && answer.interaction !== "multiple_choice") return true;
  const { options } = answer;
  const groups = byLength(options);
  if (groups.length === 1) return true;
  const mixed = groups.filter(({ from, to, rights }) => rights > 0 && rights < to - from);
  if (rule !== "loose" && options.every(({ value }) => typeof value === "number"))
    return rule === "plain" && mixed.some(({ from, to }) => to - from === options.length - 1);
  if (rule !== "loose" && mixed.length > 0) return false;
  const right = options.filter((option) => option.right).length;
  const wanted = wantedPlaces(length, options.length, right);
  return groups.every(({ from, to, rights }) => rights === wanted.slice(from, to).filter(Boolean).length);
}

/** Which places, by length, are to be right: all sets of that many places alike. */
function wantedPlaces(length: number, count: number, right: number): boolean[] {
  const places = Array.from({ length: count }, (_, place) => place);
  const chosen = new Set(new Draw(`length ${length}`).sample(places, right));
  return places.map((place) => chosen.has(place));
}

/** The places that options of one length share, the shortest first, and how many of these are right. */
function byLength(options: readonly OptionDraft[]): { from: number; to: number; rights: number }[] {
  const lengths = [...new Set(options.map(({ text }) => text.length))].sort((a, b) => a - b);
  let from = 0;
  return lengths.map((length) => {
    const alike = options.filter(({ text }) => text.length === length);
    const group = { from, to: from + alike.length, rights: alike.filter(({ right }) => right).length };
    from = group.to;
    return group;
  });
}

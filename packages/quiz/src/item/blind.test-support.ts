/** What somebody picks who does not know the subject, by how the options look. */
import type { Choice } from "./item.js";

const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}+|\d+(?:[.,]\d+)*/gu) ?? [];

/** How many words an option shares with the others. */
function shared(option: Choice, options: readonly Choice[]): number {
  const others = options.filter((other) => other !== option).flatMap(({ text }) => wordsOf(text));
  const own = new Set(wordsOf(option.text));
  return others.filter((word) => own.has(word)).length / Math.max(1, own.size);
}

const best = (options: readonly Choice[], of: (option: Choice) => number): Choice[] => {
  const most = Math.max(...options.map(of));
  return options.filter((option) => of(option) >= most - 1e-12);
};

/** Each gives the options that the strategy cannot tell apart; of those, one is picked by chance. */
export const STRATEGIES: Readonly<Record<string, (options: readonly Choice[]) => readonly Choice[]>> = {
  first: (options) => options.slice(0, 1),
  last: (options) => options.slice(-1),
  longest: (options) => best(options, ({ text }) => text.length),
  shortest: (options) => best(options, ({ text }) => -text.length),
  most_repeated_words: (options) => best(options, (option) => shared(option, options)),
  middle_value: (options) => {
    if (!options.every(({ value }) => typeof value === "number")) return options;
    const sorted = [...options].sort((a, b) => Number(a.value) - Number(b.value));
    const middle = (sorted.length - 1) / 2;
    return sorted.filter((_, i) => Math.abs(i - middle) < 1);
  },
};

/** The chance that what a strategy picks is right, less the chance of any option. */
export function gain(
  pick: (options: readonly Choice[]) => readonly Choice[],
  options: readonly Choice[],
): number {
  const share = (list: readonly Choice[]): number => list.filter(({ right }) => right).length / list.length;
  return share(pick(options)) - share(options);
}

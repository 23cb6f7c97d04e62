import { distance } from "./distance.js";
import { otherNames } from "./other-names.js";

/** A longer name is nobody's slip of the pen, and would take long to compare. */
const longestName = 64;
/** The beginning of a word says which word from so many letters on. */
const shortestBeginning = 3;
/** One slip in so many letters: more, and it is another word. */
const lettersPerSlip = 3;

/**
 * The one of `names` that `wrong` was most likely meant to be; undefined where none is near, or where several are as near as
 * each other: a wrong guess leads further astray than none. In this order: the same letters whatever the case and the
 * marks between words, another word for the same thing, the same words in another order, few edits, the beginning of one name
 * alone, the last words of one name alone.
 */
export function nearest(wrong: string, names: Iterable<string>): string | undefined {
  if (wrong.length > longestName) return undefined;
  const typed = spelt(wrong);
  const known = [...names].map(speltOnce);
  for (const isNear of [sameLetters, sameThing, sameWords, fewestEdits(typed, known), begins, ends]) {
    const near = known.filter((name) => isNear(typed, name));
    if (near.length > 0) return near.length === 1 ? near[0]?.name : undefined;
  }
  return undefined;
}

interface Spelt {
  name: string;
  words: readonly string[];
  letters: string;
}

/** A name as its words, however they are set apart: `max_iso`, `maxIso`, `max-iso`. */
function spelt(name: string): Spelt {
  const words = name
    .replace(/([a-z\d])([A-Z])/g, "$1_$2")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
  return { name, words, letters: words.join("") };
}

/** Names that there are, each taken apart once: they are the contract's, and few. */
const taken = new Map<string, Spelt>();

function speltOnce(name: string): Spelt {
  const known = taken.get(name) ?? spelt(name);
  taken.set(name, known);
  return known;
}

type Near = (typed: Spelt, name: Spelt) => boolean;

const sameLetters: Near = (typed, name) => typed.letters === name.letters && typed.letters !== "";

const sameThing: Near = (typed, { name }) => otherNames.get(typed.words.join("_")) === name;

const sameWords: Near = (typed, name) =>
  typed.words.length === name.words.length && typed.words.every((word) => name.words.includes(word));

const begins: Near = (typed, { letters }) =>
  typed.letters.length >= shortestBeginning && letters.startsWith(typed.letters);

const ends: Near = (typed, { words }) =>
  typed.letters.length >= shortestBeginning &&
  words.slice(-typed.words.length).join(" ") === typed.words.join(" ");

/** Names as few edits away as any, where those are few for their length. */
function fewestEdits(typed: Spelt, known: readonly Spelt[]): Near {
  // No name is near beyond so many.
  const most = Math.floor(typed.letters.length / lettersPerSlip);
  const edits = new Map(known.map((name) => [name, distance(typed.letters, name.letters, most)]));
  const least = Math.min(...edits.values());
  return (_, name) => {
    const slips = Math.floor(Math.min(typed.letters.length, name.letters.length) / lettersPerSlip);
    return edits.get(name) === least && least <= slips;
  };
}

/**
 * How hard a question is, 0 to 1, from its features: a stated rule, not yet fitted to learners' answers.
 *
 *   0.08 for each step of the solution beyond the first, to 0.24
 * + the hardest operation: recall 0, compare 0.1, add 0.1, doubling or halving a whole
 *   number of times 0.15, multiply 0.2, judge 0.25 (weigh what two things do against each other), power or logarithm 0.35
 * + 0.03 for each thing beyond the first that has to be decided on its own (option of a multiple choice, pair of a matching,
 *   entry of an ordering), to 0.15
 * + 0.2 × how near two options, or the key of a numeric question and a wrong number that was foreseen, lie to each other (1 for
 *   the same, 0 at four times or a quarter). Of options it is any two: from the nearest to the key learners could tell the key
 * + 0.2 × the chance of missing by guessing
 */
import type { AnswerDraft, Draft, Operation } from "./draft.js";

const OPERATION: Record<Operation, number> = {
  recall: 0,
  compare: 0.1,
  add: 0.1,
  double: 0.15,
  multiply: 0.2,
  judge: 0.25,
  power: 0.35,
};

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));

/** Chance of full marks for somebody who guesses. */
function guessed(answer: AnswerDraft): number {
  switch (answer.interaction) {
    case "single_choice":
      return 1 / answer.options.length;
    case "multiple_choice":
      return 1 / (2 ** answer.options.length - 1);
    case "numeric":
      return 0;
    case "ordering":
      return 1 / factorial(answer.entries.length);
    case "matching":
      return 1 / factorial(answer.pairs.length);
  }
}

/** How many things are decided on their own. */
function decisions(answer: AnswerDraft): number {
  switch (answer.interaction) {
    case "single_choice":
    case "numeric":
      return 1;
    case "multiple_choice":
      return answer.options.length;
    case "ordering":
      return answer.entries.length;
    case "matching":
      return answer.pairs.length;
  }
}

const nearness = (key: number, other: number): number =>
  key > 0 && other > 0 ? Math.max(0, 1 - Math.abs(Math.log(other / key)) / Math.log(4)) : 0;

function nearest(answer: AnswerDraft): number {
  if (answer.interaction === "numeric") {
    return Math.max(0, ...answer.anticipated.map(({ value }) => nearness(answer.value, value)));
  }
  if (answer.interaction !== "single_choice") return 0;
  const values = answer.options.map(({ value }) => value);
  if (!values.every((value) => typeof value === "number")) return 0;
  const pairs = values.flatMap((a, i) => values.slice(i + 1).map((b) => nearness(a, b)));
  return Math.max(...pairs);
}

export function difficultyOf({ answer, steps }: Draft): number {
  const hardest = Math.max(...steps.map(({ operation }) => OPERATION[operation]));
  const sum =
    Math.min(0.24, 0.08 * (steps.length - 1)) +
    hardest +
    Math.min(0.15, 0.03 * (decisions(answer) - 1)) +
    0.2 * nearest(answer) +
    0.2 * (1 - guessed(answer));
  return Math.round(100 * Math.min(1, sum)) / 100;
}

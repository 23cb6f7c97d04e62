import type { Pair } from "../item/item.js";
import { QuizProblem } from "../quiz-problem.js";

/** What a learner answered: the one field that goes with the question's interaction. */
export interface Response {
  /** Ids of the options chosen; one for a single choice. */
  choices?: readonly string[] | undefined;
  /** A numeric answer, in the unit asked for. */
  number?: number | undefined;
  /** Ids of all entries, the first at the top. */
  order?: readonly string[] | undefined;
  /** Partners found; each left-hand entry at most once. */
  pairs?: readonly Pair[] | undefined;
}

const malformed = (field: keyof Response, message: string): QuizProblem =>
  new QuizProblem("response_malformed", message, field);

/** The field of a response that is asked for. @throws QuizProblem where it is missing, or another one is there. */
function only<Field extends keyof Response>(response: Response, field: Field): NonNullable<Response[Field]> {
  const others = (["choices", "number", "order", "pairs"] as const).filter(
    (name) => name !== field && response[name] !== undefined,
  );
  const [other] = others;
  if (other) throw malformed(other, `This question is answered with ${field}, not with ${other}.`);
  const value = response[field];
  if (value === undefined || value === null)
    throw malformed(field, `This question is answered with ${field}.`);
  return value;
}

function knownOnce(field: keyof Response, ids: readonly string[], known: readonly string[]): void {
  const stray = ids.find((id) => !known.includes(id));
  if (stray !== undefined) throw malformed(field, `This question has no entry ${JSON.stringify(stray)}.`);
  if (new Set(ids).size !== ids.length) throw malformed(field, "Each entry can be named once.");
}

/** Chosen options; none is an answer too. */
export function choicesOf(response: Response, known: readonly string[], most: number): readonly string[] {
  const choices = only(response, "choices");
  knownOnce("choices", choices, known);
  if (choices.length > most) throw malformed("choices", `At most ${most} can be chosen here.`);
  return choices;
}

export function numberOf(response: Response): number {
  const number = only(response, "number");
  if (!Number.isFinite(number)) throw malformed("number", "The answer must be a finite number.");
  return number;
}

/** A whole order of the known ids. */
export function orderOf(response: Response, known: readonly string[]): readonly string[] {
  const order = only(response, "order");
  knownOnce("order", order, known);
  if (order.length !== known.length) throw malformed("order", "Every entry has its place in the order.");
  return order;
}

export function pairsOf(
  response: Response,
  left: readonly string[],
  right: readonly string[],
): readonly Pair[] {
  const pairs = only(response, "pairs");
  knownOnce(
    "pairs",
    pairs.map((pair) => pair.left),
    left,
  );
  const stray = pairs.find((pair) => !right.includes(pair.right));
  if (stray) throw malformed("pairs", `This question has no entry ${JSON.stringify(stray.right)}.`);
  return pairs;
}

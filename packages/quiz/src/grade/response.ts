import type { QuizRefusals } from "@sunfathom/words";
import type { ChoiceItem, Item, MatchingItem, OrderingItem, Pair } from "../item/item.js";
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

export const malformed = (field: string, parameters: QuizRefusals["response_malformed"]): QuizProblem =>
  new QuizProblem({ code: "response_malformed", parameters }, field);

/** The field of a response that is asked for. @throws QuizProblem where it is missing, or another one is there. */
function only<Field extends keyof Response>(response: Response, field: Field): NonNullable<Response[Field]> {
  const others = (["choices", "number", "order", "pairs"] as const).filter(
    (name) => name !== field && response[name] !== undefined,
  );
  const [other] = others;
  if (other) throw malformed(other, { case: "other_field", field, other });
  const value = response[field];
  if (value === undefined || value === null) throw malformed(field, { case: "not_answered", field });
  return value;
}

function knownOnce(field: keyof Response, ids: readonly string[], known: readonly string[]): void {
  const stray = ids.find((id) => !known.includes(id));
  if (stray !== undefined) throw malformed(field, { case: "no_such_entry", entry: stray });
  if (new Set(ids).size !== ids.length) throw malformed(field, { case: "entry_repeated" });
}

const idsOf = (entries: readonly { id: string }[]): string[] => entries.map(({ id }) => id);

/** Chosen options; none where nothing was answered. */
export function choicesOf({ interaction, options }: ChoiceItem, response: Response): readonly string[] {
  const choices = only(response, "choices");
  const most = interaction === "single_choice" ? 1 : options.length;
  knownOnce("choices", choices, idsOf(options));
  if (choices.length > most) throw malformed("choices", { case: "too_many_chosen", most });
  return choices;
}

export function numberOf(response: Response): number {
  const number = only(response, "number");
  if (!Number.isFinite(number)) throw malformed("number", { case: "not_a_number" });
  return number;
}

/** A whole order of the entries. */
export function orderOf({ entries }: OrderingItem, response: Response): readonly string[] {
  const order = only(response, "order");
  knownOnce("order", order, idsOf(entries));
  if (order.length !== entries.length) throw malformed("order", { case: "order_incomplete" });
  return order;
}

/** Partners found; none where nothing was answered. */
export function pairsOf({ left, right }: MatchingItem, response: Response): readonly Pair[] {
  const pairs = only(response, "pairs");
  knownOnce(
    "pairs",
    pairs.map((pair) => pair.left),
    idsOf(left),
  );
  const known = idsOf(right);
  const stray = pairs.find((pair) => !known.includes(pair.right));
  if (stray) throw malformed("pairs", { case: "no_such_entry", entry: stray.right });
  return pairs;
}

/** Holds a response to its question without marking it. @throws QuizProblem where it does not fit */
export function checkResponse(item: Item, response: Response): void {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      choicesOf(item, response);
      break;
    case "numeric":
      numberOf(response);
      break;
    case "ordering":
      orderOf(item, response);
      break;
    case "matching":
      pairsOf(item, response);
  }
}

/** Whether a response that fits its question answers nothing. A number and an order always answer something. */
export const isBlank = ({ choices, pairs }: Response): boolean => (choices ?? pairs)?.length === 0;

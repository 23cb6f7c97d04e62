import type { QuizRefusals } from "@sunfathom/words";
import type { ChoiceItem, Item, MatchingItem, NumericItem, OrderingItem, Pair } from "../item/item.js";
import type { Catalogue } from "../messages/catalogue.js";
import { QuizProblem } from "../quiz-problem.js";
import { readNumber } from "./typed-number.js";

/** What a learner answered: the one field that goes with the question's interaction. */
export interface Response {
  /** Ids of the options chosen; one for a single choice. */
  choices?: readonly string[] | undefined;
  /** A numeric answer, in the unit asked for. */
  number?: number | undefined;
  /** The same as it was typed: with a point or a comma, with its unit or without. */
  typed?: string | undefined;
  /** Ids of all entries, the first at the top. */
  order?: readonly string[] | undefined;
  /** Partners found; each left-hand entry at most once. */
  pairs?: readonly Pair[] | undefined;
}

export const malformed = (field: string, parameters: QuizRefusals["response_malformed"]): QuizProblem =>
  new QuizProblem({ code: "response_malformed", parameters }, field);

/** The field of a response that is asked for. @throws QuizProblem where another one is there */
function only<Field extends keyof Response>(response: Response, field: Field): NonNullable<Response[Field]> {
  const other = (["choices", "number", "typed", "order", "pairs"] as const).find(
    (name) => name !== field && response[name] !== undefined,
  );
  if (other) throw malformed(other, { case: "other_field", field, other });
  const value = response[field];
  if (value === undefined || value === null) throw new RangeError("A blank never comes here.");
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

/** The number of an answer, as a number or as it was typed. */
export function numberOf(
  { unit }: NumericItem,
  response: Response,
  say: Pick<Catalogue, "thousands">,
): number {
  if (response.typed !== undefined) return typedNumber(only(response, "typed"), unit, say);
  const number = only(response, "number");
  if (!Number.isFinite(number)) throw malformed("number", { case: "not_a_number" });
  return number;
}

/** @throws QuizProblem for what is no number, or one in another unit than was asked for */
function typedNumber(typed: string, unit: string, { thousands }: Pick<Catalogue, "thousands">): number {
  const read = readNumber(typed, unit, thousands);
  if ("value" in read) return read.value;
  throw malformed("typed", read.hint);
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
export function checkResponse(item: Item, response: Response, say: Catalogue): void {
  if (isBlank(response)) {
    checkBlank(item, response);
    return;
  }
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      choicesOf(item, response);
      break;
    case "numeric":
      numberOf(item, response, say);
      break;
    case "ordering":
      orderOf(item, response);
      break;
    case "matching":
      pairsOf(item, response);
  }
}

const FIELDS = {
  single_choice: ["choices"],
  multiple_choice: ["choices"],
  numeric: ["number", "typed"],
  ordering: ["order"],
  matching: ["pairs"],
} as const satisfies Record<Item["interaction"], readonly (keyof Response)[]>;

/** A blank has no field or an empty one, but none of another kind of question. @throws QuizProblem where it has */
export function checkBlank({ interaction }: Item, response: Response): void {
  const own: readonly (keyof Response)[] = FIELDS[interaction];
  const other = (["choices", "number", "typed", "order", "pairs"] as const).find(
    (name) => response[name] !== undefined && !own.includes(name),
  );
  const [field = "choices"] = own;
  if (other) throw malformed(other, { case: "other_field", field, other });
}

/** Whether a response answers nothing: it has no answer at all, an empty list, or nothing but blanks typed. */
export const isBlank = ({ choices, number, typed, order, pairs }: Response): boolean =>
  number === undefined && (typed ?? "").trim() === "" && (choices ?? order ?? pairs ?? []).length === 0;

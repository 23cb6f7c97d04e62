/** The part of an item that depends on its kind: response declaration, interaction and processing. */

import { orderScore, ordersOf } from "../grade/order-score.js";
import type { ChoiceItem, Item, MatchingItem, NumericItem, OrderingItem } from "../item/item.js";
import { type Element, el, text } from "../xml/xml.js";
import {
  feedbackOfResponse,
  isCorrect,
  isOrder,
  isWithin,
  mappedScore,
  processing,
  RESPONSE,
  setFeedback,
  setScore,
} from "./processing.js";

interface FeedbackText {
  /** Value of the feedback outcome that shows it. */
  id: string;
  text: string;
  /** What is said of single options before it, each a line. */
  lines?: string[];
}

export interface InteractionParts {
  declaration: Element;
  interaction: Element;
  /** Whether the interaction stands inside a paragraph. */
  inline: boolean;
  processing: Element;
  /** One of them is shown at a time. */
  feedback: FeedbackText[];
}

const RIGHT = "right";
const WRONG = "wrong";

interface Words {
  right: string;
  wrong: string;
  /** Of what is right in part. */
  partly: string;
}

export function interactionOf(item: Item, words: Words): InteractionParts {
  switch (item.interaction) {
    case "single_choice":
      return single(item);
    case "multiple_choice":
      return multiple(item, words);
    case "numeric":
      return numeric(item, words);
    case "ordering":
      return ordering(item, words);
    case "matching":
      return matching(item, words);
  }
}

const declare = (
  cardinality: string,
  baseType: string,
  correct: readonly (string | number)[],
  mapping?: Element,
): Element =>
  el(
    "responseDeclaration",
    { identifier: RESPONSE, cardinality, baseType },
    el("correctResponse", {}, ...correct.map((value) => el("value", {}, text(String(value))))),
    ...(mapping ? [mapping] : []),
  );

const choices = ({ options }: ChoiceItem, maxChoices: number): Element =>
  el(
    "choiceInteraction",
    { responseIdentifier: RESPONSE, shuffle: "true", maxChoices },
    ...options.map((option) => el("simpleChoice", { identifier: option.id }, text(option.text))),
  );
const byOption = ({ options }: ChoiceItem): FeedbackText[] =>
  options.map((option) => ({ id: option.id, text: option.feedback }));
const rightIds = ({ options }: ChoiceItem): string[] => options.filter((o) => o.right).map(({ id }) => id);

function single(item: ChoiceItem): InteractionParts {
  return {
    declaration: declare("single", "identifier", rightIds(item)),
    interaction: choices(item, 1),
    inline: false,
    processing: processing(
      [{ when: isCorrect(), set: [setScore(1), feedbackOfResponse()] }],
      [setScore(0), feedbackOfResponse()],
    ),
    feedback: byOption(item),
  };
}

/** As written in markup. */
const marked = (score: number): number => Number(score.toFixed(6));

/** Shares of a score that add up to exactly 1 in decimal fractions. */
const share = (count: number): number => Number((1 / count).toFixed(6));

/** What is said of each option, under its own words: of the right ones, or of all. */
const ofOptions = ({ options }: ChoiceItem, rightOnly: boolean): string[] =>
  options.filter(({ right }) => right || !rightOnly).map((option) => `${option.text}: ${option.feedback}`);

function multiple(item: ChoiceItem, words: Words): InteractionParts {
  const each = share(rightIds(item).length);
  const mapping = el(
    "mapping",
    { lowerBound: 0, upperBound: 1, defaultValue: 0 },
    ...item.options.map(({ id, right }) => el("mapEntry", { mapKey: id, mappedValue: right ? each : -each })),
  );
  return {
    declaration: declare("multiple", "identifier", rightIds(item), mapping),
    interaction: choices(item, 0),
    inline: false,
    processing: processing(
      [{ when: isCorrect(), set: [setScore(1), setFeedback(RIGHT)] }],
      [mappedScore(), setFeedback(WRONG)],
    ),
    // All options in one text: a text for each that was chosen would be as many dialogs, one upon the other.
    feedback: [
      { id: RIGHT, text: words.right, lines: ofOptions(item, true) },
      { id: WRONG, text: words.partly, lines: ofOptions(item, false) },
    ],
  };
}

/** Signs that the longest answer can have. */
const EXPECTED_LENGTH = 8;

function numeric({ value, accepted, anticipated }: NumericItem, words: Words): InteractionParts {
  return {
    declaration: declare("single", "float", [value]),
    interaction: el("textEntryInteraction", {
      responseIdentifier: RESPONSE,
      expectedLength: EXPECTED_LENGTH,
    }),
    inline: true,
    processing: processing(
      [
        { when: isWithin(accepted), set: [setScore(1), setFeedback(RIGHT)] },
        ...anticipated.map((wrong, i) => ({
          when: isWithin(wrong),
          set: [setScore(0), setFeedback(`${WRONG}${i + 1}`)],
        })),
      ],
      [setScore(0), setFeedback(WRONG)],
    ),
    feedback: [
      { id: RIGHT, text: words.right },
      ...anticipated.map((wrong, i) => ({ id: `${WRONG}${i + 1}`, text: wrong.feedback })),
      { id: WRONG, text: words.wrong },
    ],
  };
}

/**
 * Orders that earn a part, each with its score: mappings of the standard do not score orders, so every order that earns something
 * is named. Of five entries these are 48 of 120.
 */
const earning = ({ right_order }: OrderingItem): { order: readonly string[]; score: number }[] =>
  ordersOf(right_order)
    .map((order) => ({ order, score: orderScore(right_order, order) }))
    .filter(({ score }) => score > 0 && score < 1)
    .sort((a, b) => b.score - a.score);

function ordering(item: OrderingItem, words: Words): InteractionParts {
  const { entries, right_order, anticipated } = item;
  return {
    declaration: declare("ordered", "identifier", right_order),
    interaction: el(
      "orderInteraction",
      { responseIdentifier: RESPONSE, shuffle: "true", orientation: "vertical" },
      ...entries.map((entry) => el("simpleChoice", { identifier: entry.id }, text(entry.text))),
    ),
    inline: false,
    processing: processing(
      [
        { when: isCorrect(), set: [setScore(1), setFeedback(RIGHT)] },
        ...anticipated.map((wrong, i) => ({
          when: isOrder(wrong.order),
          set: [setScore(marked(orderScore(right_order, wrong.order))), setFeedback(`${WRONG}${i + 1}`)],
        })),
        ...earning(item)
          .filter(({ order }) => !anticipated.some((wrong) => wrong.order.join() === order.join()))
          .map(({ order, score }) => ({
            when: isOrder(order),
            set: [setScore(marked(score)), setFeedback(WRONG)],
          })),
      ],
      [setScore(0), setFeedback(WRONG)],
    ),
    feedback: [
      { id: RIGHT, text: words.right },
      ...anticipated.map((wrong, i) => ({ id: `${WRONG}${i + 1}`, text: wrong.feedback })),
      { id: WRONG, text: words.partly },
    ],
  };
}

function matching({ left, right, pairs, wrong }: MatchingItem, words: Words): InteractionParts {
  const directed = pairs.map((pair) => `${pair.left} ${pair.right}`);
  const each = share(pairs.length);
  const set = (entries: MatchingItem["left"]): Element =>
    el(
      "simpleMatchSet",
      {},
      ...entries.map(({ id, text: label }) =>
        el("simpleAssociableChoice", { identifier: id, matchMax: 1 }, text(label)),
      ),
    );
  return {
    declaration: declare(
      "multiple",
      "directedPair",
      directed,
      el(
        "mapping",
        { lowerBound: 0, upperBound: 1, defaultValue: 0 },
        ...directed.map((mapKey) => el("mapEntry", { mapKey, mappedValue: each })),
      ),
    ),
    interaction: el(
      "matchInteraction",
      { responseIdentifier: RESPONSE, shuffle: "true", maxAssociations: pairs.length },
      set(left),
      set(right),
    ),
    inline: false,
    processing: processing(
      [{ when: isCorrect(), set: [setScore(1), setFeedback(RIGHT)] }],
      [mappedScore(), setFeedback(WRONG)],
    ),
    feedback: [
      { id: RIGHT, text: words.right },
      { id: WRONG, text: wrong.feedback },
    ],
  };
}

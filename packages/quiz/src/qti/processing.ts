/** Response processing: a score, and the feedback to show, spelled out so that no player needs templates of its own. */

import type { Interval } from "../item/item.js";
import { type Element, el, text } from "../xml/xml.js";

export const RESPONSE = "RESPONSE";
export const SCORE = "SCORE";
export const FEEDBACK = "FEEDBACK";
export const MAXSCORE = "MAXSCORE";
/** The feedback of a blank, and what the outcome says before anything was handed in, which shows nothing. */
export const BLANK = "blank";
export const NO_FEEDBACK = "none";

const base = (baseType: string, value: string | number): Element =>
  el("baseValue", { baseType }, text(String(value)));
const variable = (identifier: string): Element => el("variable", { identifier });

export const setScore = (value: number): Element =>
  el("setOutcomeValue", { identifier: SCORE }, base("float", value));
export const setFeedback = (identifier: string): Element =>
  el("setOutcomeValue", { identifier: FEEDBACK }, base("identifier", identifier));
/** The response names the feedback: one for each option. */
export const feedbackOfResponse = (): Element =>
  el("setOutcomeValue", { identifier: FEEDBACK }, variable(RESPONSE));
export const mappedScore = (): Element =>
  el("setOutcomeValue", { identifier: SCORE }, el("mapResponse", { identifier: RESPONSE }));

/** The whole response is the declared one. */
export const isCorrect = (): Element =>
  el("match", {}, variable(RESPONSE), el("correct", { identifier: RESPONSE }));

/** A numeric response within an explicit interval, both ends included. */
export const isWithin = ({ low, high }: Interval): Element =>
  el(
    "and",
    {},
    el("gte", {}, variable(RESPONSE), base("float", low)),
    el("lte", {}, variable(RESPONSE), base("float", high)),
  );

/** An ordered or unordered response that equals a given list of identifiers. */
export const isOrder = (ids: readonly string[]): Element =>
  el("match", {}, variable(RESPONSE), el("ordered", {}, ...ids.map((id) => base("identifier", id))));

const isNull = (): Element => el("isNull", {}, variable(RESPONSE));

export interface Case {
  when: Element;
  set: readonly Element[];
}

/** The first case that holds. A blank scores 0 and has a feedback of its own: an outcome without a value has stopped a player. */
export function processing(cases: readonly Case[], otherwise: readonly Element[]): Element {
  return el(
    "responseProcessing",
    {},
    el(
      "responseCondition",
      {},
      el("responseIf", {}, isNull(), setScore(0), setFeedback(BLANK)),
      ...cases.map(({ when, set }) => el("responseElseIf", {}, when, ...set)),
      el("responseElse", {}, ...otherwise),
    ),
  );
}

/** What a whole paper scored. */
export const sumOfScores = (): Element =>
  el(
    "outcomeProcessing",
    {},
    el(
      "setOutcomeValue",
      { identifier: SCORE },
      el("sum", {}, el("testVariables", { variableIdentifier: SCORE })),
    ),
  );

/** A fair draft as an item: shuffled, named, with feedback, solution and difficulty. */

import type { MisconceptionId } from "@sunfathom/words";
import { citation } from "../messages/citations.js";
import { difficultyOf } from "./difficulty.js";
import type { ChoiceDraft, Draft, MatchingDraft, NumericDraft, OptionDraft, OrderingDraft } from "./draft.js";
import { fingerprintOf } from "./fingerprint.js";
import type { Item, ItemCommon } from "./item.js";
import type { Maker, Template } from "./template.js";

const LETTERS = "ABCDEFGHIJ";
const letter = (i: number): string => LETTERS.charAt(i);

/** @param place in the paper, and where it was found. */
export function finish(
  template: Template,
  draft: Draft,
  maker: Maker,
  { id, origin }: Pick<ItemCommon, "id" | "origin">,
): Item {
  const { say, level } = maker;
  const common: ItemCommon = {
    id,
    fingerprint: fingerprintOf(template, draft),
    template: template.id,
    topic: template.topic,
    level,
    basis: draft.basis,
    stem: stemOf(draft, maker),
    ...(draft.picture ? { picture: draft.picture() } : {}),
    difficulty: difficultyOf(draft),
    solution: {
      steps: draft.steps.map(({ text }) => text),
      sources: draft.sources.map((source) => citation(say, source)),
    },
    given: draft.given,
    origin,
  };
  const { answer } = draft;
  const missed = draft.steps[draft.steps.length - 1]?.text ?? "";
  const feedback = (misconception: MisconceptionId): string =>
    `${say.misconceptions[misconception]} ${missed}`;
  switch (answer.interaction) {
    case "single_choice":
    case "multiple_choice":
      return choiceItem(common, answer, maker, { missed, feedback });
    case "numeric":
      return numericItem(common, answer, feedback);
    case "ordering":
      return orderingItem(common, answer, maker, feedback);
    case "matching":
      return matchingItem(common, answer, maker, feedback);
  }
}

function stemOf({ stem, answer }: Draft, { say }: Maker): string {
  if (answer.interaction === "numeric") return `${stem} ${say.common.answerIn(answer)}`;
  return answer.interaction === "multiple_choice" ? `${stem} ${say.common.chooseAll}` : stem;
}

type Feedback = (misconception: MisconceptionId) => string;

function choiceItem(
  common: ItemCommon,
  { interaction, options }: ChoiceDraft,
  { draw, say }: Maker,
  { missed, feedback }: { missed: string; feedback: Feedback },
): Item {
  const about = ({ right, misconception, feedback: own }: OptionDraft): string => {
    if (own !== undefined) return own;
    const single = interaction === "single_choice";
    if (right || misconception === undefined)
      return single ? `${say.common.right} ${missed}` : say.common.right;
    return single ? feedback(misconception) : say.misconceptions[misconception];
  };
  return {
    ...common,
    interaction,
    options: draw.shuffle(options).map((option, i) => ({
      id: letter(i),
      text: option.text,
      value: option.value,
      right: option.right,
      ...(option.misconception ? { misconception: option.misconception } : {}),
      feedback: about(option),
    })),
  };
}

/** Rounded where binary fractions would show. */
const clean = (value: number): number => Number(value.toFixed(6));

function numericItem(
  common: ItemCommon,
  { unit, decimals, value, tolerance, accepted: more, anticipated }: NumericDraft,
  feedback: Feedback,
): Item {
  const asked = Number(value.toFixed(decimals));
  const around = (middle: number, by: number) => ({ low: clean(middle - by), high: clean(middle + by) });
  const accepted = more ?? around(asked, tolerance);
  const taken = [accepted];
  const free = anticipated.flatMap(({ misconception, value: wrong }) => {
    // A smaller wrong number is recognised as narrowly as the right one, in proportion.
    const own = around(wrong, tolerance * Math.min(1, Math.abs(wrong / value)));
    if (!Number.isFinite(wrong) || taken.some(({ low, high }) => own.low <= high && own.high >= low))
      return [];
    taken.push(own);
    return [{ misconception, feedback: feedback(misconception), ...own }];
  });
  return {
    ...common,
    interaction: "numeric",
    unit,
    decimals,
    value: asked,
    accepted,
    anticipated: free,
  };
}

function orderingItem(
  common: ItemCommon,
  { entries, anticipated }: OrderingDraft,
  { draw }: Maker,
  feedback: Feedback,
): Item {
  // Every order alike, the right one too: were it left out, the places shown would tell something of it.
  const shown = draw.shuffle(entries);
  const idOf = new Map(shown.map(({ key }, i) => [key, letter(i)]));
  const ids = (keys: readonly string[]): string[] => keys.map((key) => idOf.get(key) ?? key);
  const right_order = ids(entries.map(({ key }) => key));
  return {
    ...common,
    interaction: "ordering",
    entries: shown.map(({ text }, i) => ({ id: letter(i), text })),
    right_order,
    anticipated: anticipated
      .map(({ misconception, keys }) => ({
        misconception,
        feedback: feedback(misconception),
        order: ids(keys),
      }))
      .filter(
        ({ order }, i, all) =>
          order.join() !== right_order.join() &&
          // Two misunderstandings may come to the same order: the first is told.
          all.findIndex((other) => other.order.join() === order.join()) === i,
      ),
  };
}

function matchingItem(
  common: ItemCommon,
  { pairs, spare, misconception }: MatchingDraft,
  { draw }: Maker,
  feedback: Feedback,
): Item {
  const left = draw.shuffle(pairs.map((pair) => pair.left)).map((text, i) => ({ id: `L${i + 1}`, text }));
  const right = draw
    .shuffle([...pairs.map((pair) => pair.right), ...spare])
    .map((text, i) => ({ id: `R${i + 1}`, text }));
  const idOf = (list: typeof left, text: string): string => list.find((e) => e.text === text)?.id ?? "";
  return {
    ...common,
    interaction: "matching",
    left,
    right,
    pairs: left.map(({ id, text }) => ({
      left: id,
      right: idOf(right, pairs.find((pair) => pair.left === text)?.right ?? ""),
    })),
    wrong: { misconception, feedback: feedback(misconception) },
  };
}

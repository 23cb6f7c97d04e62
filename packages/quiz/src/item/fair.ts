/** What a draft must keep to become a question. Templates keep most of it by themselves; this is the gate for all. */
import type { AnswerDraft, ChoiceDraft, Draft } from "./draft.js";
import { outside } from "./options.js";

const different = (list: readonly unknown[]): boolean => new Set(list).size === list.length;

function fairChoice({ interaction, options, interval }: ChoiceDraft): boolean {
  const right = options.filter((o) => o.right);
  const wrong = options.filter((o) => !o.right);
  const single = interaction === "single_choice";
  return (
    options.length >= 3 &&
    different(options.map((o) => o.text.toLowerCase())) &&
    different(options.map((o) => o.value)) &&
    (single ? right.length === 1 : right.length >= 1 && wrong.length >= 1) &&
    wrong.every((o) => o.misconception !== undefined) &&
    (!interval || wrong.every((o) => outside(interval, Number(o.value))))
  );
}

function fairAnswer(answer: AnswerDraft): boolean {
  switch (answer.interaction) {
    case "single_choice":
    case "multiple_choice":
      return fairChoice(answer);
    case "numeric":
      return Number.isFinite(answer.value) && answer.tolerance > 0;
    case "ordering":
      return answer.entries.length >= 3 && different(answer.entries.map(({ text }) => text.toLowerCase()));
    case "matching":
      return (
        answer.pairs.length >= 3 &&
        different(answer.pairs.map(({ left }) => left)) &&
        different([...answer.pairs.map(({ right }) => right), ...answer.spare])
      );
  }
}

export const isFair = ({ answer, steps }: Draft): boolean => steps.length > 0 && fairAnswer(answer);

import type { Scene } from "../scene/scene.js";
import { broken, type RuleOf } from "./rule.js";

type CardField = keyof NonNullable<Scene["card_samples"]>[number] & string;

/** Fields that mean something only all together. */
export interface NotWhole {
  missing: readonly string[];
  all: readonly string[];
}

/** Some fields of a card's picture mean something only all together. */
export function wholeGroups<Group extends "card_exposure" | "card_gains">(
  code: Group,
  names: readonly CardField[],
): RuleOf<`${Group}_whole`, NotWhole> {
  return {
    code: `${code}_whole`,
    violations: ({ card_samples = [] }) =>
      card_samples.flatMap((sample, index) => {
        const given = names.find((name) => sample[name] !== undefined);
        const missing = names.filter((name) => sample[name] === undefined);
        if (given === undefined || missing.length === 0) return [];
        return [broken(`/card_samples/${index}/${given}`, { missing, all: names })];
      }),
  };
}

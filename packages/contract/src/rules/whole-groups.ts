import type { Scene } from "../scene/scene.js";
import type { Rule } from "./rule.js";

type CardField = keyof NonNullable<Scene["card_samples"]>[number] & string;

/** Some fields of a card's picture mean something only all together. */
export function wholeGroups(code: "card_exposure" | "card_gains", names: readonly CardField[]): Rule {
  const all = names.join(", ");
  return {
    code: `${code}_whole`,
    fields: ["card_samples"],
    violations: ({ card_samples = [] }) =>
      card_samples.flatMap((sample, index) => {
        const given = names.find((name) => sample[name] !== undefined);
        const missing = names.filter((name) => sample[name] === undefined);
        if (given === undefined || missing.length === 0) return [];
        return [
          {
            pointer: `/card_samples/${index}/${given}`,
            message: `${missing.join(" and ")} missing.`,
            allowed: `all of ${all}, or none`,
          },
        ];
      }),
  };
}

import type { Item } from "../item/item.js";

/** What decides the marks of a question: what it states and what is right, as numbers and ids, without a word of any language. */
export function decidesMarks(item: Item): object {
  const { id, template, given, interaction } = item;
  return { id, template, given, interaction, ...keyOf(item) };
}

function keyOf(item: Item): object {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return { options: item.options.map(({ id, value, right }) => ({ id, value, right })) };
    case "numeric": {
      const { decimals, accepted } = item;
      return { decimals, accepted };
    }
    case "ordering":
      return { right_order: item.right_order };
    case "matching":
      return { pairs: item.pairs };
  }
}

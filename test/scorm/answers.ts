// Answers to try: all right, all wrong, and every way of being right in part that a paper offers.
import type { Response } from "../../packages/quiz/src/grade/response.js";
import type { Item } from "../../packages/quiz/src/index.js";

export type Way = "right" | "wrong" | "mixed";

function rightOf(item: Item): Response {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return { choices: item.options.filter(({ right }) => right).map(({ id }) => id) };
    case "numeric":
      return { typed: String(item.value) };
    case "ordering":
      return { order: item.right_order };
    case "matching":
      return { pairs: item.pairs };
  }
}

function wrongOf(item: Item): Response {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice": {
      const wrong = item.options.filter(({ right }) => !right).map(({ id }) => id);
      return { choices: item.interaction === "single_choice" ? wrong.slice(-1) : wrong };
    }
    case "numeric":
      return { typed: `${item.accepted.high + 1000}` };
    case "ordering":
      return { order: [...item.right_order].reverse() };
    case "matching":
      return {
        pairs: item.pairs.map(({ left }, i) => ({
          left,
          right: item.pairs[(i + 1) % item.pairs.length]?.right ?? "",
        })),
      };
  }
}

/** Right in part where the question allows it; a foreseen mistake or an end of what is accepted where it does not. */
function partOf(item: Item): Response {
  switch (item.interaction) {
    case "single_choice":
      return {
        choices: item.options
          .filter(({ right }) => !right)
          .map(({ id }) => id)
          .slice(0, 1),
      };
    case "multiple_choice": {
      const of = (right: boolean) => item.options.filter((o) => o.right === right).map(({ id }) => id);
      const right = of(true);
      return { choices: right.length > 1 ? right.slice(1) : [...right, ...of(false).slice(0, 1)] };
    }
    case "numeric": {
      // With a decimal comma and the unit behind, as people type.
      const typed = String(item.accepted.low).replace(".", ",");
      return { typed: typed.length + item.unit.length < 15 ? `${typed} ${item.unit}`.trim() : typed };
    }
    case "ordering": {
      const [first = "", second = "", ...rest] = item.right_order;
      return { order: [second, first, ...rest] };
    }
    case "matching":
      return { pairs: item.pairs.slice(1) };
  }
}

/** Every third question of a mixed paper stays blank, beginning with this one. */
const BLANK_EVERY = 3;

/** An answer to each question; `{}` for a blank. */
export const responsesTo = (items: readonly Item[], way: Way): Response[] =>
  items.map((item, i) => {
    if (way === "mixed") return i % BLANK_EVERY === 1 && items.length > 2 ? {} : partOf(item);
    return way === "right" ? rightOf(item) : wrongOf(item);
  });

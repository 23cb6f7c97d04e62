/** What a learner answers with, by the kind of question: a field that gives a response, or says why it cannot. */
import type { PlayerHint } from "@sunfathom/words";
import type { Response } from "../../grade/response.js";
import { readNumber } from "../../grade/typed-number.js";
import type { ChoiceItem, Item, MatchingItem, NumericItem, OrderingItem } from "../../item/item.js";
import type { Paper } from "../paper.js";
import { fill, h } from "./dom.js";
import { placesOf } from "./places.js";

/** Signs of a number with its unit, so few that the numbers of 200 questions fit into what a platform keeps. */
const LONGEST_NUMBER = 16;

export interface Field {
  element: HTMLElement;
  /** A blank has no field in its response. */
  read(): { response: Response } | { hint: string };
  show(response: Response): void;
  /** Nothing can be changed any more. */
  lock(): void;
}

type Say = Paper["say"];

export function fieldOf(item: Item, say: Say): Field {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return choices(item);
    case "numeric":
      return numeric(item, say);
    case "ordering":
      return ordering(item, say);
    case "matching":
      return matching(item, say);
  }
}

function choices({ id, interaction, options }: ChoiceItem): Field {
  const inputs = options.map((option) =>
    h("input", {
      type: interaction === "single_choice" ? "radio" : "checkbox",
      name: id,
      value: option.id,
    }),
  );
  const element = h(
    "div",
    { class: "options" },
    ...options.map((option, i) => h("label", {}, inputs[i] ?? "", h("span", {}, option.text))),
  );
  return {
    element,
    read: () => {
      const chosen = inputs.filter(({ checked }) => checked).map(({ value }) => value);
      return { response: chosen.length === 0 ? {} : { choices: chosen } };
    },
    show: (response) => {
      for (const input of inputs) input.checked = response.choices?.includes(input.value) ?? false;
    },
    lock: () => {
      for (const input of inputs) input.disabled = true;
    },
  };
}

function numeric({ unit }: NumericItem, say: Say): Field {
  const input = h("input", {
    type: "text",
    id: "number",
    inputmode: "decimal",
    autocomplete: "off",
    maxlength: LONGEST_NUMBER,
    size: LONGEST_NUMBER,
  });
  const label = unit === "" ? say.answerBare : fill(say.answerIn, { unit });
  return {
    element: h(
      "p",
      { class: "number" },
      h("label", { for: "number" }, label),
      input,
      ...(unit === "" ? [] : [h("span", { "aria-hidden": "true" }, unit)]),
    ),
    read: () => {
      const typed = input.value.trim();
      if (typed === "") return { response: {} };
      const found = readNumber(typed, unit);
      if ("value" in found) return { response: { number: found.value } };
      const code = found.hint.case === "other_unit" && unit === "" ? "unit_unasked" : found.hint.case;
      return { hint: fill(say.hints[code satisfies PlayerHint], { typed, unit }) };
    },
    show: ({ number }) => {
      input.value = number === undefined ? "" : String(number).replace(".", say.decimalMark);
    },
    lock: () => {
      input.readOnly = true;
    },
  };
}

function ordering({ entries }: OrderingItem, say: Say): Field {
  const places = entries.map((_, i) => {
    const label = fill(say.place, { n: i + 1 });
    return { id: String(i), label, spoken: label };
  });
  const field = placesOf({ places, entries, say });
  return {
    element: field.element,
    read: () => {
      const put = field.put();
      if (put.size === 0) return { response: {} };
      if (put.size < entries.length) return { hint: say.hints.order_incomplete };
      return { response: { order: places.map(({ id }) => put.get(id) ?? "") } };
    },
    show: ({ order = [] }) => field.set(new Map(order.map((id, i) => [String(i), id]))),
    lock: field.lock,
  };
}

function matching({ left, right }: MatchingItem, say: Say): Field {
  const places = left.map(({ id, text }) => ({
    id,
    label: text,
    spoken: fill(say.partnerOf, { left: text }),
  }));
  const field = placesOf({ places, entries: right, say });
  return {
    element: field.element,
    read: () => {
      const pairs = [...field.put()].map(([l, r]) => ({ left: l, right: r }));
      return { response: pairs.length === 0 ? {} : { pairs } };
    },
    show: ({ pairs = [] }) => field.set(new Map(pairs.map((pair) => [pair.left, pair.right]))),
    lock: field.lock,
  };
}

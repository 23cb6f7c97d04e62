/**
 * Places that entries are put into, for orders and matches: each has a list to choose from, which the keyboard and screen readers
 * use, and takes what is dragged onto it. An entry has one place at a time.
 */
import { h } from "./dom.js";
import { draggable } from "./drag.js";

interface Listed {
  id: string;
  text: string;
}

interface Asked {
  places: readonly { id: string; label: string; spoken: string }[];
  entries: readonly Listed[];
  say: { entries: string; howToPlace: string; notPlaced: string };
}

export interface Places {
  element: HTMLElement;
  /** The entry in each place, place by place. */
  put(): ReadonlyMap<string, string>;
  set(put: ReadonlyMap<string, string>): void;
  lock(): void;
}

export function placesOf({ places, entries, say }: Asked): Places {
  const pool = h("ul", { class: "pool", "aria-hidden": "true" });
  const shown = places.map(({ id, label, spoken }) => {
    const list = h(
      "select",
      { id: `place-${id}`, "aria-label": spoken, "data-place": id },
      h("option", { value: "" }, say.notPlaced),
      ...entries.map((entry) => h("option", { value: entry.id }, entry.text)),
    );
    const bed = h("ul", { class: "bed", "aria-hidden": "true" });
    const row = h(
      "li",
      { class: "place", "data-place": id },
      h("span", { class: "label", "aria-hidden": "true" }, label),
      bed,
      list,
    );
    return { id, list, bed, row };
  });
  const chips = new Map(
    entries.map(({ id, text }) => [id, h("li", { class: "entry", "data-entry": id }, text)]),
  );
  const element = h(
    "div",
    { class: "places" },
    h("p", { class: "hint" }, say.howToPlace),
    pool,
    h("ol", {}, ...shown.map(({ row }) => row)),
  );

  /**
   * Chips lie where the lists say, and a list offers what no other has: the keyboard goes through a list entry by entry, and would
   * take each from its place on the way.
   */
  const lay = (): void => {
    for (const { list } of shown) {
      const others = shown.filter((other) => other.list !== list).map((other) => other.list.value);
      for (const option of list.options)
        option.disabled = option.value !== "" && others.includes(option.value);
    }
    for (const [id, chip] of chips) {
      const place = shown.find(({ list }) => list.value === id);
      (place?.bed ?? pool).append(chip);
    }
  };
  const move = (entry: string, to: string | undefined): void => {
    for (const { id, list } of shown) {
      if (id === to) list.value = entry;
      else if (list.value === entry) list.value = "";
    }
    lay();
  };
  for (const { id, list } of shown) list.addEventListener("change", () => move(list.value, id));
  const stop = [...chips].map(([id, chip]) =>
    draggable(chip, (under) => {
      const row = under?.closest(".place");
      if (row instanceof HTMLElement && element.contains(row)) move(id, row.dataset["place"]);
      else if (under?.closest(".pool") === pool) move(id, undefined);
    }),
  );
  lay();
  return {
    element,
    put: () => new Map(shown.filter(({ list }) => list.value !== "").map(({ id, list }) => [id, list.value])),
    set: (put) => {
      for (const { id, list } of shown) list.value = put.get(id) ?? "";
      lay();
    },
    lock: () => {
      for (const { list } of shown) list.disabled = true;
      for (const end of stop) end();
      element.classList.add("locked");
    },
  };
}

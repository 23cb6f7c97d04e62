// Neither its place, nor its rank among numbers, nor the length of its text gives an answer away. Over many draws none of them is
// right more than 5 points above chance, which is the share of right options. 1000 draws of each template and level in
// `places.prove.ts`; in fewer, chance itself does something.

import { isProof } from "@sunfathom/fixtures/is-proof";
import { describe, expect, it } from "vitest";
import { LANGUAGES, type Language } from "../messages/catalogue.js";
import { itemsFor } from "../paper/items-for.js";
import { TEMPLATES } from "../templates/table.js";
import type { Choice, Item, Level } from "./item.js";

const DRAWS = isProof ? 1000 : 150;
/** Three standard deviations of a share of a half, the largest there is, where draws are few. */
const MOST = 0.05 + (DRAWS < 1000 ? 1.5 / Math.sqrt(DRAWS) : 0);

const drawn = (template: string, level: Level, language: Language): Item[] =>
  Array.from({ length: DRAWS }, (_, i) =>
    itemsFor({ seed: `place ${i}`, level, count: 1, templates: [template], units: "metric", language }),
  ).flat();

/** How often each position is right, by position; a tie is shared among those that are alike. */
class Tally {
  readonly #right = new Map<number, number>();
  #all = 0;
  #rights = 0;
  #options = 0;

  add(options: readonly Choice[], of: (option: Choice) => number): void {
    this.#all++;
    this.#options += options.length;
    for (const option of options.filter(({ right }) => right)) {
      this.#rights++;
      const smaller = options.filter((other) => of(other) < of(option)).length;
      const alike = options.filter((other) => of(other) === of(option)).length;
      for (let place = smaller; place < smaller + alike; place++)
        this.#right.set(place, (this.#right.get(place) ?? 0) + 1 / alike);
    }
  }

  /** The most that a position is right above chance. */
  excess(): number {
    return Math.max(...this.#right.values()) / this.#all - this.#rights / this.#options;
  }
}

const choices = TEMPLATES.filter(({ interaction }) => /_choice$/.test(interaction));
const cases = choices.flatMap(({ id, levels }) =>
  levels.flatMap((level) => LANGUAGES.map((language) => [id, level, language] as const)),
);

describe.each(cases)("%s at level %s, in %s", (id, level, language) => {
  it("gives no answer away by place, rank or length", () => {
    const [place, rank, length] = [new Tally(), new Tally(), new Tally()];
    let numbers = 0;
    for (const item of drawn(id, level, language)) {
      if (!("options" in item)) throw new Error(`${id} has no options`);
      const { options } = item;
      place.add(options, (option) => options.indexOf(option));
      length.add(options, ({ text }) => text.length);
      if (!options.every(({ value }) => typeof value === "number")) continue;
      numbers++;
      rank.add(options, ({ value }) => Number(value));
    }
    expect({ place: place.excess() }).toEqual({
      place: expect.toSatisfy((excess: number) => excess <= MOST),
    });
    expect({ length: length.excess() }).toEqual({
      length: expect.toSatisfy((excess: number) => excess <= MOST),
    });
    if (numbers > 0)
      expect({ rank: rank.excess() }).toEqual({ rank: expect.toSatisfy((excess: number) => excess <= MOST) });
  }, 600_000);
});

const orders = TEMPLATES.filter(({ interaction }) => interaction === "ordering");

it.each(orders.flatMap(({ id, levels }) => levels.map((level) => [id, level] as const)))(
  "%s at level %s shows the first of an order in any place",
  (id, level) => {
    const places = new Map<string, number>();
    let entries = 0;
    for (const item of drawn(id, level, "en")) {
      if (item.interaction !== "ordering") throw new Error(`${id} is no ordering`);
      entries = item.entries.length;
      const first = item.right_order[0] ?? "";
      places.set(first, (places.get(first) ?? 0) + 1 / DRAWS);
    }
    expect(Math.max(...places.values()) - 1 / entries).toBeLessThan(MOST);
  },
  600_000,
);

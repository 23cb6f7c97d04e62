import { describe, expect, it } from "vitest";
import { itemsFor } from "../paper/items-for.js";
import type { Item } from "./item.js";
import { LEVELS } from "./item.js";
import { publicItem } from "./public-item.js";

const SEED = "b7c1f0a9-secret";
const items = LEVELS.flatMap((level) =>
  itemsFor({ seed: SEED, level, count: 90, units: "metric", language: "en" }),
);

/** The same question with another key; what learners see must not change with it. */
function withAnotherKey(item: Item): Item {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return {
        ...item,
        options: item.options.map((o) => ({ ...o, right: !o.right, feedback: "?", value: 0 })),
      };
    case "numeric":
      return { ...item, value: 1, accepted: { low: 0, high: 2 }, anticipated: [] };
    case "ordering":
      return { ...item, right_order: [...item.right_order].reverse(), anticipated: [] };
    case "matching":
      return { ...item, pairs: [], wrong: { ...item.wrong, feedback: "?" } };
  }
}

describe("what learners see", () => {
  it("is the same whatever the key is", () => {
    for (const item of items) {
      expect(
        publicItem({ ...withAnotherKey(item), given: {}, solution: { steps: [], sources: [] } }),
      ).toEqual(publicItem(item));
    }
  });

  it("holds neither seed nor solution, feedback, misconception or numbers behind the options", () => {
    for (const item of items) {
      const seen = publicItem(item);
      const text = JSON.stringify(seen);
      expect(text).not.toContain(SEED);
      for (const step of item.solution.steps) expect(text).not.toContain(step);
      const allowed = [
        "id",
        "fingerprint",
        "template",
        "topic",
        "level",
        "interaction",
        "stem",
        "picture",
        "difficulty",
        "options",
        "left",
        "right",
        "unit",
        "decimals",
      ];
      expect(allowed).toEqual(expect.arrayContaining(Object.keys(seen)));
      for (const entry of [...(seen.options ?? []), ...(seen.left ?? []), ...(seen.right ?? [])]) {
        expect(Object.keys(entry)).toEqual(["id", "text"]);
      }
    }
  });

  it("names entries by their place", () => {
    for (const item of items) {
      const options = publicItem(item).options ?? [];
      expect(options.map(({ id }) => id)).toEqual([..."ABCDEFGH"].slice(0, options.length));
    }
  });
});

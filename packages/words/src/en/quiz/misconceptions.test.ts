import { expect, it } from "vitest";
import { MISCONCEPTIONS_EN } from "./misconceptions.js";

it("each misconception has a feedback of its own", () => {
  const texts = Object.values(MISCONCEPTIONS_EN);
  expect(new Set(texts).size).toBe(texts.length);
});

import { expect, it } from "vitest";
import { sayShortened, shorten } from "./shorten.js";

it("cuts lists to three entries, at any depth, and says how long each was at the most", () => {
  const { value, lists } = shorten({
    depths: [1, 2, 3, 4],
    whole: [1, 2, 3],
    inner: [{ depths: [1, 2, 3, 4, 5] }],
  });
  expect(value).toEqual({ depths: [1, 2, 3], whole: [1, 2, 3], inner: [{ depths: [1, 2, 3] }] });
  expect([...lists]).toEqual([["depths", 5]]);
  expect(sayShortened(lists)).toContain("`depths` (5)");
});

it("leaves out no caution, and no option of a question", () => {
  const given = { cautions: [1, 2, 3, 4], options: [1, 2, 3, 4] };
  const { value, lists } = shorten(given);
  expect(value).toEqual(given);
  expect(sayShortened(lists)).toBeUndefined();
});

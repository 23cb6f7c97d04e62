import { expect, it } from "vitest";
import { distance } from "./distance.js";

// Kukich K. (1992), Techniques for automatically correcting words in text, ACM Computing Surveys 24(4), on the four
// edits of Damerau F. J. (1964), CACM 7(3); kitten/sitting is the textbook pair; CA/ABC tells the restricted form
// (3) from the unrestricted one (2).
it.each([
  ["", "", 0],
  ["", "abc", 3],
  ["depth_m", "depth_m", 0],
  ["dept_m", "depth_m", 1],
  ["deepth_m", "depth_m", 1],
  ["dapth_m", "depth_m", 1],
  ["detph_m", "depth_m", 1],
  ["kitten", "sitting", 3],
  ["ca", "abc", 3],
])("from %j to %j: %i", (a, b, edits) => {
  expect(distance(a, b)).toBe(edits);
  expect(distance(b, a)).toBe(edits);
});

// Ukkonen E. (1985), Information and Control 64: what lies off the strip is further away than the bound.
it("bounded, finds the same or that it is further", () => {
  const random = seeded(5);
  const word = () =>
    Array.from({ length: Math.floor(random() * 12) }, () => "abc"[Math.floor(random() * 3)]).join("");
  for (let round = 0; round < 3000; round += 1) {
    const [a, b] = [word(), word()];
    const edits = distance(a, b);
    for (const most of [0, 1, 2, 4, 9])
      expect(distance(a, b, most), `${a} ${b} ${most}`).toBe(
        edits <= most ? edits : Number.POSITIVE_INFINITY,
      );
  }
});

/** Park and Miller 1988: the same numbers each time. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

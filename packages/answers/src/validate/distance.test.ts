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

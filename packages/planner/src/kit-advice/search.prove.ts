import { expect, it } from "vitest";
import { holdAgainstAll } from "./search.test-support.js";

it("finds the very set that trying all subsets does, on 5000 shelves", () => {
  expect(holdAgainstAll(1000, 5000)).toBeGreaterThan(3000);
}, 600_000);

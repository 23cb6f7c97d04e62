import { expect, it } from "vitest";
import { filterName } from "./filter-name.js";

it.each([
  [{ kind: "none" }, "no filter"],
  [{ kind: "red", density: 0.6 }, "a red filter of density 0.6"],
  [{ kind: "magenta", density: 1.05, id: "shelf-2" }, "shelf-2 (a magenta filter of density 1.05)"],
  [{ kind: "red", id: "mine" }, "mine (a measured red filter)"],
] as const)("a filter is called by its id, kind and density: %o", (filter, name) => {
  expect(filterName(filter)).toBe(name);
});

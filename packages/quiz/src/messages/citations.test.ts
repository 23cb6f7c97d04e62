import { expect, it } from "vitest";
import { TEMPLATES } from "../templates/table.js";
import { CATALOGUES } from "./catalogue.js";
import { citation } from "./citations.js";

it("a source that nobody knows is a mistake", () => {
  expect(() => citation(CATALOGUES.en, "hearsay")).toThrow(RangeError);
  expect(citation(CATALOGUES.en, "jerlov_1976")).toContain("Jerlov 1976");
});

it("templates have ids of their own in snake_case", () => {
  const ids = TEMPLATES.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[a-z]+(_[a-z]+)*$/);
});

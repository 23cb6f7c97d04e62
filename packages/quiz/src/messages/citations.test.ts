import { expect, it } from "vitest";
import { itemsFor } from "../paper/items-for.js";
import { TEMPLATES } from "../templates/table.js";
import { CATALOGUES } from "./catalogue.js";
import { citation } from "./citations.js";

it("a source that nobody knows is a mistake", () => {
  expect(() => citation(CATALOGUES.en, "hearsay")).toThrow(RangeError);
  expect(citation(CATALOGUES.en, "jerlov_1976")).toContain("Jerlov 1976");
});

it("Spanish has words of its own for each source that questions cite and that says more than a work's name", () => {
  const cited = TEMPLATES.flatMap(({ id, levels }) =>
    levels.flatMap((level) =>
      itemsFor({ seed: "sources", level, count: 1, templates: [id], units: "metric", language: "es" }),
    ),
  ).flatMap(({ solution }) => solution.sources);
  expect(cited.length).toBeGreaterThan(100);
  for (const source of new Set(cited))
    expect(source).not.toMatch(/\b(?:the|Table|edition|from|by definition|means?)\b/i);
});

it("templates have ids of their own in snake_case", () => {
  const ids = TEMPLATES.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[a-z]+(_[a-z]+)*$/);
});

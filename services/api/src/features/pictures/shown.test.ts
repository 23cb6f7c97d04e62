import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { fileOf, shown, shownNames } from "./shown.js";

const readme = readFileSync(new URL("../../../../../README.md", import.meta.url), "utf8");

it.each(shownNames)("%s is on the README as the service draws it (npm run generate)", (name) => {
  expect(readFileSync(fileOf(name), "utf8")).toBe(`${shown(name)}\n`);
  expect(readme).toContain(`](services/api/docs/generated/${name}.svg)`);
});

import { readdirSync } from "node:fs";
import { expect, it } from "vitest";

// Answers hand reasons on from one decision to another: a dive's advice tells them apart by their codes.
it("gives no two reasons one code, in whichever catalogues they stand", async () => {
  const files = readdirSync(new URL("reasons", import.meta.url)).filter(
    // What decides a filter, and what is left without a card, are parts of other reasons.
    (name) => !/\.test\.|^(filter-main|filter-seldom|unset-balance)\.ts$/.test(name),
  );
  const modules: object[] = await Promise.all(
    files.map((name) => import(`./reasons/${name.replace(".ts", "")}.ts`)),
  );
  const catalogues = modules.flatMap((module) => Object.values(module));
  const codes = catalogues.flatMap((catalogue) => Object.keys(catalogue));
  expect(catalogues).toHaveLength(11);
  expect(codes.length).toBeGreaterThan(90);
  expect(codes.filter((code, index) => codes.indexOf(code) !== index)).toEqual([]);
});

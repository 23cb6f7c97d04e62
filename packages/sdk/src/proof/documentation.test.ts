// Every export says what it is; every function, class and constant has an example; every number has its unit.
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const read = (path: string) => readFileSync(new URL(`../${path}`, import.meta.url), "utf8");
const files = [
  "client.ts",
  "core/api-of.ts",
  "core/cache.ts",
  "core/errors.ts",
  "core/types.ts",
  "offline/index.ts",
  "offline/model-version.ts",
  "offline/offline-with.ts",
  "offline/options.ts",
  "offline/part.ts",
  ...readdirSync(new URL("../offline/generated/parts", import.meta.url)).map(
    (name) => `offline/generated/parts/${name}`,
  ),
  "generated/api.ts",
  "generated/problems.ts",
  "generated/version.ts",
  "generated/types.ts",
];

const exported =
  /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export (?:abstract )?(const|class|function|type|interface) (\w+)/g;
const all = files.flatMap((file) =>
  [...read(file).matchAll(exported)].map(([, comment = "", kind = "", name = ""]) => ({
    comment,
    kind,
    name,
  })),
);

describe("the exports", () => {
  it.each(all.map((entry) => [entry.name, entry] as const))("%s is documented", (_name, { comment }) => {
    expect(comment.replace(/[/*\s]/g, "").length).toBeGreaterThan(10);
  });

  const groups = /^(Api|Calculations|Reference|Pictures|Sheets|Quiz|Service|Trips)$/;
  const values = all.filter(({ kind, name }) => /const|class|function/.test(kind) && !groups.test(name));
  it.each(values.map((entry) => [entry.name, entry] as const))("%s has an example", (_name, { comment }) => {
    expect(comment).toContain("@example");
  });

  it("every method of the groups has an example", () => {
    const methods = [
      ...read("generated/api.ts").matchAll(/(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n) {2}\w+\(.*\): Call</g),
    ];
    expect(methods.length).toBeGreaterThan(10);
    for (const [, comment] of methods) expect(comment).toContain("@example");
  });
});

describe("the fields of a scene", () => {
  const scene = /export type SceneFields = \{([\s\S]*?)^\};/m.exec(read("generated/types.ts"))?.[1] ?? "";
  const fields = [...scene.matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s+(\w+)\?: (.*);/g)];
  const numbers = fields.filter(([, , , type = ""]) => /^number\b/.test(type));

  it("are all there", () => expect(numbers.length).toBeGreaterThan(25));

  it.each(numbers.map(([, comment = "", name = ""]) => [name, comment]))(
    "%s says its range",
    (_name, comment) => {
      expect(comment).toMatch(/-?\d[\d.]* to \d/);
    },
  );
});

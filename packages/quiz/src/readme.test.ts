// The examples of the README run.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as quiz from "./index.js";

const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
const examples = [...readme.matchAll(/```js\n([\s\S]*?)```/g)].map(([, code = ""]) => code);

/** A right answer, for the example that marks one. */
function answerOf(item: quiz.Item): quiz.Response {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return { choices: item.options.filter((o) => o.right).map(({ id }) => id) };
    case "numeric":
      return { number: item.value };
    case "ordering":
      return { order: item.right_order };
    case "matching":
      return { pairs: item.pairs };
  }
}

describe("the README", () => {
  it.each(examples.map((code, i) => [i + 1, code] as const))("example %i runs", async (_, code) => {
    const body = code.replace(/import (\{[^}]*\}) from "@sunfathom\/quiz";/, "const $1 = quiz;");
    expect(body).not.toContain("import ");
    const printed: unknown[][] = [];
    const AsyncFunction = (async () => {}).constructor as new (
      ...parts: string[]
    ) => (...given: unknown[]) => Promise<void>;
    const run = new AsyncFunction("quiz", "answerOf", "console", body);
    await run(quiz, answerOf, { log: (...parts: unknown[]) => printed.push(parts) });
    expect(printed).toHaveLength(1);
    expect(printed.flat()).not.toContain(undefined);
    if (code.includes("gradePaper")) expect(printed[0]?.[0]).toBe(1);
  });

  it("has as many examples as it had", () => {
    expect(examples).toHaveLength(3);
  });
});

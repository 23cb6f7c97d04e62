// Guards that a code in an example of the description is one that answers have: it is met in answers to scenes of the description.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { operations } from "../packages/answers/src/operations/in-english.test-support.js";
import { quizTemplates, sceneExamples } from "../packages/contract/src/index.js";
import { models } from "../packages/planner/src/index.js";
import { misconceptions, problemPage } from "../packages/words/src/index.js";
import { describedExamples } from "./support/described-examples.js";

/** What an answer says in codes, by the fields that tell such an object from others. */
const kinds = {
  reason: { code: "code", beside: ["text", "basis", "figures"], not: "phase" },
  step: { code: "code", beside: ["phase", "text", "why"], not: undefined },
  caution: { code: "code", beside: ["text"], not: "basis" },
  cause: { code: "cause", beside: ["text", "how_to_shrink"], not: undefined },
} as const;

type Fields = Readonly<Record<string, unknown>>;

function objectsIn(value: unknown): Fields[] {
  if (typeof value !== "object" || value === null) return [];
  const inside = Object.values(value).flatMap(objectsIn);
  return Array.isArray(value) ? inside : [value as Fields, ...inside];
}

function codesIn(objects: readonly Fields[], { code, beside, not }: (typeof kinds)[keyof typeof kinds]) {
  const found = objects.filter(
    (object) => [code, ...beside].every((name) => name in object) && (not === undefined || !(not in object)),
  );
  return new Set(found.map((object) => String(object[code])));
}

/** Every object in the answers of all calculations to the scenes of the examples. */
const met = operations.flatMap(({ examples, request, reply }) => {
  const further = request === "Scene" ? Object.values(sceneExamples) : [];
  return [...examples, ...further].flatMap(({ scene }) => {
    const replied = reply(scene);
    return replied.status === "ok" ? objectsIn(replied.body) : [];
  });
});

describe("the codes in examples of the description", () => {
  const examples = describedExamples();

  it.each(Object.entries(kinds))("of a %s are met in answers", (_kind, kind) => {
    const shown = codesIn(examples, kind);
    expect(shown.size).toBeGreaterThan(0);
    const real = codesIn(met, kind);
    for (const code of shown) expect([...real]).toContain(code);
  });

  it.each([
    ["Reason", "code", "reason"],
    ["DiveStep", "code", "step"],
    ["Caution", "code", "caution"],
    ["UncertaintyCause", "cause", "cause"],
  ] as const)("of %s stand alone too, and are met as well", (component, field, kind) => {
    const codes = fieldExamples(component, field);
    expect(codes.length).toBeGreaterThan(0);
    for (const code of codes) expect([...codesIn(met, kinds[kind])]).toContain(code);
  });

  it("name sources of the model, questions and misconceptions that there are", () => {
    const known = models().map(({ id }) => id);
    for (const id of fieldExamples("ModelVersion", "sources").flat()) expect(known).toContain(id);
    for (const id of fieldExamples("WaterTypeInfo", "sources").flat()) expect(known).toContain(id);
    for (const id of fieldExamples("QuizItem", "template")) expect(quizTemplates).toContain(id);
    for (const id of fieldExamples("QuizRemark", "misconception")) expect(misconceptions).toContain(id);
  });

  it("of a problem's errors are explained on the page of that problem", () => {
    const problems = describedExamples("type", "code", "errors");
    expect(problems.length).toBeGreaterThan(5);
    for (const { code, errors } of problems) {
      const explained = problemPage(code as Parameters<typeof problemPage>[0]).errors?.map((one) => one.code);
      for (const error of errors as Fields[]) expect(explained).toContain(error["code"]);
    }
  });
});

/** The examples of one field of a component. */
function fieldExamples(component: string, field: string): unknown[] {
  const { components } = JSON.parse(
    readFileSync(new URL("../openapi/openapi.json", import.meta.url), "utf8"),
  );
  return components.schemas[component]?.properties?.[field]?.examples ?? [];
}

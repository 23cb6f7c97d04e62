// Guards that a code in an example of the description is one that answers have: it is met in answers to scenes of the description.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { operations } from "../packages/answers/src/operations/in-english.test-support.js";
import { quizTemplates, sceneExamples } from "../packages/contract/src/index.js";
import { models } from "../packages/planner/src/index.js";
import { misconceptions, problemPage } from "../packages/words/src/index.js";
import { prepareTrip, tripOperations } from "../services/api/src/features/trips/index.js";
import { tongueOf } from "../services/api/src/tongues.js";
import { describedExamples } from "./support/described-examples.js";

type Fields = Readonly<Record<string, unknown>>;

function objectsIn(value: unknown): Fields[] {
  if (typeof value !== "object" || value === null) return [];
  const inside = Object.values(value).flatMap(objectsIn);
  return Array.isArray(value) ? inside : [value as Fields, ...inside];
}

/** Fields that tell what is said by code apart: a reason has a basis, a step a phase, a way to pay its way, a caution none. */
const marks = ["basis", "phase", "way", "how_to_shrink"];
const kindOf = (fields: object) => marks.filter((name) => name in fields).join(" ");
/** Whether an object, or a schema's fields, are of something said by code: with its text, and no error, which has a pointer. */
const isSaid = (fields: object) =>
  ("code" in fields || "cause" in fields) && "text" in fields && !("pointer" in fields);
const said = ({ code, cause }: Fields, kind: string) => `${kind}: ${code ?? cause}`;

/** An aperture that the diver fixed, where the lens has wider ones. */
const stoppedDown = { scene: { water_type: "IB", depth_m: 30, f_number: 8, min_iso: 25 } };

/** A filter that is worth about what mounting it has to be. */
const evenly = { scene: { water_type: "II", depth_m: 2 } };

/** What is said by code in the answers of all calculations to the scenes of the examples, and to two more. */
const met = new Set(
  operations.flatMap(({ examples, request, reply }) => {
    const further = request === "Scene" ? [...Object.values(sceneExamples), stoppedDown, evenly] : [];
    return [...examples, ...further].flatMap(({ scene }) => {
      const replied = reply(scene);
      if (replied.status !== "ok") return [];
      return objectsIn(replied.body)
        .filter(isSaid)
        .map((object) => said(object, kindOf(object)));
    });
  }),
);

for (const operation of tripOperations)
  for (const { value } of Object.values(operation.examples)) {
    const ready = prepareTrip(operation, value, tongueOf("en"));
    const replied = ready.status === "ready" ? ready.compute() : ready;
    if (replied.status === "ok")
      for (const object of objectsIn(replied.body).filter(isSaid)) met.add(said(object, kindOf(object)));
  }

const { components } = JSON.parse(readFileSync(new URL("../openapi/openapi.json", import.meta.url), "utf8"));
const fieldsOf = (component: string): Record<string, { examples?: unknown[] }> =>
  components.schemas[component]?.properties ?? {};

describe("the codes in examples of the description", () => {
  it("are met in answers", () => {
    const shown = describedExamples()
      .filter(isSaid)
      .map((object) => said(object, kindOf(object)));
    expect(new Set(shown).size).toBeGreaterThan(5);
    expect(shown.filter((code) => !met.has(code))).toEqual([]);
  });

  it("are met as well where they are the example of a field alone: the first, which all others that there are may follow", () => {
    const shown = Object.keys(components.schemas).flatMap((component) => {
      const fields = fieldsOf(component);
      // The first: the others are all the codes that there are, which no few scenes meet.
      const examples = (fields["code"] ?? fields["cause"])?.examples?.slice(0, 1) ?? [];
      return isSaid(fields) ? examples.slice(0, 1).map((code) => said({ code }, kindOf(fields))) : [];
    });
    expect(shown.length).toBeGreaterThan(4);
    expect(shown.filter((code) => !met.has(code))).toEqual([]);
  });

  it("name sources of the model, questions and misconceptions that there are", () => {
    const known: unknown[] = models().map(({ id }) => id);
    const sources = ["ModelVersion", "WaterTypeInfo"].flatMap(
      (component) => fieldsOf(component)["sources"]?.examples ?? [],
    );
    expect(sources.length).toBeGreaterThan(1);
    for (const id of sources.flat()) expect(known).toContain(id);
    for (const id of fieldsOf("QuizItem")["template"]?.examples ?? []) expect(quizTemplates).toContain(id);
    for (const id of fieldsOf("QuizRemark")["misconception"]?.examples ?? [])
      expect(misconceptions).toContain(id);
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

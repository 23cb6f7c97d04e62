// Guards that the codes of problems are one catalogue: thrown, explained under /problems, described, and true in examples.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { calculationOf } from "../packages/answers/src/operations/in-english.test-support.js";
import { type OutsideCode, outsideCodes, problemCodes } from "../packages/contract/src/index.js";
import type { SceneRefusalCode } from "../packages/planner/src/index.js";
import { outsideLight, outsideMeanings, outsideMounting, problemPage } from "../packages/words/src/index.js";
import { describedExamples } from "./support/described-examples.js";
import { base, mount, outside, there } from "./support/outside-scenes.js";

const attenuation = calculationOf("attenuation");
const filterMounting = calculationOf("filter-mounting");
const mixedLight = calculationOf("mixed-light");

const ring = { id: "a", from_mm: 67, to_mm: 77, thickness_mm: 3 };

type Replies = Pick<typeof attenuation, "reply">;

/** Codes for callers of the model itself: a scene that would meet them has been refused by the contract. */
const guarded: Record<Exclude<SceneRefusalCode, OutsideCode>, [calculation: Replies, scene: object]> = {
  latitude_out_of_range: [attenuation, { ...there, latitude_deg: 91, time: "2026-03-10T10:15:00Z" }],
  longitude_out_of_range: [attenuation, { ...there, longitude_deg: 181, time: "2026-03-10T10:15:00Z" }],
  chlorophyll_out_of_range: [attenuation, { chlorophyll_mg_m3: 21, depth_m: 5 }],
  lamp_unknown: [mixedLight, { ...base, lamps: [{ flux_lm: 4000, distance_m: 1, led: "candle" }] }],
  water_missing: [attenuation, { depth_m: 5 }],
  lens_field_unknown: [filterMounting, mount],
  ring_id_twice: [filterMounting, { ...mount, field_of_view_deg: 90, rings: [ring, ring] }],
};

function problemOf([calculation, scene]: [Replies, object]) {
  const replied = calculation.reply(scene);
  if (replied.status !== "problem") throw new Error("The scene was answered.");
  return replied.problem;
}

describe("what lies outside the model", () => {
  it.each(outsideCodes)("as %s is met by a scene, with its text and what the text is made of", (code) => {
    expect(outside[code].length).toBeGreaterThan(0);
    for (const [name, scene] of outside[code]) {
      const { code: kind, errors = [] } = problemOf([calculationOf(name), scene]);
      expect([kind, errors.map((error) => error.code)]).toEqual(["outside_the_model", [code]]);
      const [error] = errors;
      expect(error?.message).toMatch(/^\S.{9}/);
      expect(error?.allowed).toMatch(/^\S.{3}/);
      expect(Object.keys(error?.parameters ?? {}).length).toBeGreaterThan(0);
    }
  });

  it("has a text and a meaning for each code, and for none that nobody meets", () => {
    const codes = [...outsideCodes].sort();
    expect([...Object.keys(outsideLight), ...Object.keys(outsideMounting)].sort()).toEqual(codes);
    expect(Object.keys(outsideMeanings).sort()).toEqual(codes);
  });

  it.each(Object.entries(guarded))("as %s is kept off by the contract", (_code, scene) => {
    expect(problemOf(scene).code).toBe("invalid_scene");
  });
});

const explained = problemCodes.flatMap((code) => (problemPage(code).errors ?? []).map((error) => error.code));

describe("the codes of errors", () => {
  it("of what lies outside the model are explained under /problems", () => {
    expect(problemPage("outside_the_model").errors?.map(({ code }) => code)).toEqual(outsideCodes);
  });

  it("are described as the ones that are explained, and no others", () => {
    const { components } = JSON.parse(
      readFileSync(new URL("../openapi/openapi.json", import.meta.url), "utf8"),
    );
    const described: string[] = components.schemas.FieldError.properties.code.examples;
    expect([...described].sort()).toEqual([...new Set(explained)].sort());
  });

  it("have the meanings that the examples of pages show", () => {
    const meanings = problemCodes.flatMap((code) => problemPage(code).errors ?? []);
    const shown = describedExamples("code", "meaning");
    expect(shown.length).toBeGreaterThan(0);
    for (const example of shown) expect(meanings).toContainEqual(example);
    const { title, explanation, meaning } = pageExamples();
    expect(problemPage("invalid_scene").title).toBe(title);
    expect(problemPage("malformed_json").explanation).toBe(explanation);
    expect(meanings.map((one) => one.meaning)).toContain(meaning);
  });

  it("are true in every example of the description", () => {
    const errors = describedExamples("pointer", "code", "message");
    expect(errors.length).toBeGreaterThan(10);
    for (const { code } of errors) expect(explained).toContain(code);
  });
});

/** What the description shows as examples of a page's texts. */
function pageExamples() {
  const { components } = JSON.parse(
    readFileSync(new URL("../openapi/openapi.json", import.meta.url), "utf8"),
  );
  const { ProblemPage, ErrorMeaning } = components.schemas;
  return {
    title: ProblemPage.properties.title.examples[0],
    explanation: ProblemPage.properties.explanation.examples[0],
    meaning: ErrorMeaning.properties.meaning.examples[0],
  };
}

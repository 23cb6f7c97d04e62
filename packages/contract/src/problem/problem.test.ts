import { describe, expect, it } from "vitest";
import { components } from "../components.js";
import { componentSchemas } from "../json-schema/convert.js";
import { quizErrorCodes } from "../quiz/error-codes.js";
import { ownSceneRules as sceneRules } from "../rules/all-with-mounting.js";
import { mountingRules } from "../rules/mounting.js";
import { problemCodes, problemStatuses } from "./catalogue.js";
import { problemComponent } from "./component-name.js";
import { fieldErrorCodes } from "./error-codes.js";
import { problemType } from "./scene-problems.js";

const schemas = componentSchemas(components);

describe("the catalogue of problems", () => {
  it("counts what it holds, so that none comes or goes unseen", () => {
    expect(problemCodes).toHaveLength(26);
    expect(fieldErrorCodes).toHaveLength(14);
  });

  it("has one type for each code, and one component for each", () => {
    expect(new Set(problemCodes.map(problemType)).size).toBe(problemCodes.length);
    const inSchemas = Object.keys(schemas).filter((name) => name.endsWith("Problem"));
    expect(inSchemas).toEqual(problemCodes.map(problemComponent).sort());
  });

  it.each(problemCodes)("%s: schema and catalogue agree", (code) => {
    const properties = schemas[problemComponent(code)]?.properties;
    expect(properties?.["code"]?.const).toBe(code);
    expect(properties?.["type"]?.const).toBe(problemType(code));
    expect(properties?.["status"]?.const).toBe(problemStatuses[code]);
  });

  // RFC 9457, section 3.1: `type` is a URI reference, `status` the HTTP status, `title` and `detail` are strings.
  it.each(problemCodes)("%s: has the members of RFC 9457", (code) => {
    expect(problemType(code)).toMatch(/^\/problems\/[a-z]+(-[a-z]+)*$/);
    expect(problemStatuses[code]).toBeGreaterThanOrEqual(400);
    expect(problemStatuses[code]).toBeLessThan(600);
    expect(schemas[problemComponent(code)]?.required).toEqual(
      expect.arrayContaining(["type", "title", "status", "detail"]),
    );
  });

  it("gives no code two meanings", () => {
    const codes = [
      ...fieldErrorCodes,
      ...[...sceneRules, ...mountingRules].map(({ code }) => code),
      ...Object.values(quizErrorCodes).flat(),
    ];
    expect(new Set(codes).size).toBe(codes.length);
  });
});

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type AnswerForm, answerNames } from "../computed.js";
import * as computed from "../generated/computed.js";
import { mountedOnForm, mountedOnProperties } from "../generated/mounted-on.js";
import { wireSchemas } from "../generated/wire-schemas.js";
import { computedModule, mountedOnModule } from "./computed-module.js";
import { formOf } from "./form.js";
import { type JsonSchema, referenced } from "./schema.js";

/** Scenes of light as whoever takes all of them puts them together. */
const wholeScene: JsonSchema = {
  ...computed.plainSceneSchema,
  properties: { ...computed.plainSceneSchema.properties, ...mountedOnProperties },
};

const parts = Object.values(computed);
const answers = parts.flatMap((part) =>
  typeof part === "object" && "component" in part ? [part as AnswerForm] : [],
);

describe("what it takes to compute", () => {
  it.each([
    ["computed.ts", computedModule],
    ["mounted-on.ts", mountedOnModule],
  ])("is what the generated module %s holds", (name, made) => {
    const file = new URL(`../generated/${name}`, import.meta.url);
    const same = readFileSync(file, "utf8") === made();
    expect(same, "run `npm run generate` and commit what it wrote").toBe(true);
  });

  it.each([
    ["Scene", wholeScene],
    ["MountingScene", computed.mountingSceneSchema],
  ])("checks of a %s all that its schema does, and what that refers to", (component, schema) => {
    const whole = new Map<string, JsonSchema>(Object.entries(wireSchemas));
    const checked = (_: string, value: unknown): unknown => {
      if (typeof value !== "object" || value === null) return value;
      const {
        $ref,
        default: _default,
        "x-decimals": _decimals,
        "x-unit": unit,
        ...rest
      } = value as JsonSchema;
      const kept = unit === undefined || unit === "1" ? rest : { ...rest, "x-unit": unit };
      if ($ref !== undefined) return whole.get(referenced($ref));
      return Array.isArray(value) ? value : kept;
    };
    const expanded = (name: string): unknown =>
      JSON.parse(JSON.stringify(JSON.parse(JSON.stringify(whole.get(name), checked)), checked));
    expect(schema).toEqual(expanded(component));
    expect(JSON.stringify(schema)).not.toContain("$ref");
  });

  it("has each answer's form, whatever components it is put together from", () => {
    const whole = new Map<string, JsonSchema>(Object.entries(wireSchemas));
    const named = (name: string): ReturnType<typeof formOf> => {
      const form = formOf(whole.get(name) ?? {}, named);
      // Whoever takes scenes with what a filter is mounted on puts the form of both together.
      if (name !== "ResolvedScene") return form;
      expect({ ...computed.plainResolvedSceneForm, ...mountedOnForm }).toEqual(form);
      return computed.plainResolvedSceneForm;
    };
    expect(answers.map(({ component }) => component)).toEqual([...answerNames]);
    for (const { component, form } of answers) expect(form, component).toEqual(named(component));
  });
});

describe("the form of a schema", () => {
  it("has fields in their order, decimals, and a mark on what may be absent", () => {
    const schema: JsonSchema = {
      type: "object",
      properties: {
        text: { type: "string" },
        depths: { type: "array", items: { type: "number", "x-decimals": 2 } },
        iso: { type: "integer" },
        on: { type: "boolean" },
        other: { $ref: "Other#" },
      },
      required: ["text", "depths"],
    };
    const form = formOf(schema, (name) => ({ [name]: 0 }));
    expect(JSON.stringify(form)).toBe(
      '{"text":"text","depths":[2],"iso?":"number","on?":"flag","other?":{"Other":0}}',
    );
  });

  it.each([{}, { type: "array" }, { type: "object", properties: { a: {} } }] satisfies JsonSchema[])(
    "is none for %j",
    (schema) => {
      expect(() => formOf(schema, () => 0)).toThrow(/has no form/);
    },
  );
});

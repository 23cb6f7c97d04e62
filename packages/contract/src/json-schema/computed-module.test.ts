import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { answerNames, sceneNames } from "../computed.js";
import * as computed from "../generated/computed.js";
import { wireSchemas } from "../generated/wire-schemas.js";
import { computedModule } from "./computed-module.js";
import { formOf } from "./form.js";
import type { JsonSchema } from "./schema.js";

const parts = Object.values(computed);
const scenes = parts.flatMap((part) => ("schemas" in part ? [part] : []));
const answers = parts.flatMap((part) => ("form" in part ? [part] : []));

describe("what it takes to compute", () => {
  it("is what the generated module holds", () => {
    const file = new URL("../generated/computed.ts", import.meta.url);
    const same = readFileSync(file, "utf8") === computedModule();
    expect(same, "run `pnpm --filter @sunfathom/contract generate` and commit what it wrote").toBe(true);
  });

  it("checks of a scene all that its schema does", () => {
    const keywords = (schema: JsonSchema): unknown =>
      JSON.parse(
        JSON.stringify(schema, (keyword, value) =>
          keyword === "x-decimals" || keyword === "default" ? undefined : value,
        ),
      );
    const whole = new Map<string, JsonSchema>(Object.entries(wireSchemas));
    expect(scenes.map(({ component }) => component)).toEqual([...sceneNames]);
    for (const { component, schemas } of scenes) {
      expect(schemas, component).toHaveProperty(component);
      for (const [name, schema] of Object.entries(schemas)) {
        expect(schema, name).toEqual(keywords(whole.get(name) ?? {}));
      }
    }
  });

  it("checks of a scene what it refers to, and carries no other's", () => {
    for (const { component, schemas } of scenes) {
      const text = JSON.stringify(schemas);
      const referred = [...text.matchAll(/"\$ref":"(\w+)#"/g)].map(([, name]) => name);
      expect(new Set([...referred, component])).toEqual(new Set(Object.keys(schemas)));
    }
  });

  it("has each answer's form, whatever components it is put together from", () => {
    const whole = new Map<string, JsonSchema>(Object.entries(wireSchemas));
    const named = (name: string): ReturnType<typeof formOf> => formOf(whole.get(name) ?? {}, named);
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

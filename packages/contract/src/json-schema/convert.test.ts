import { readFileSync } from "node:fs";
import { Ajv } from "ajv";
import { describe, expect, it } from "vitest";
import { z as z4 } from "zod";
import { z } from "zod/v3";
import { components } from "../components.js";
import { describedSchemas } from "../generated/described-schemas.js";
import { componentSchemas } from "./convert.js";
import { describedSchemasModule } from "./described-schemas-module.js";
import type { JsonSchema } from "./schema.js";
import { wireSchemasModule } from "./wire-schemas-module.js";

const schemas = componentSchemas(components);

/** Every schema in the components with its path, the components themselves left out. */
function fields(schema: JsonSchema, path: string): [string, JsonSchema][] {
  return Object.entries(schema.properties ?? {}).flatMap(([name, property]) => [
    [`${path}/${name}`, property],
    ...fields(property, `${path}/${name}`),
  ]);
}
const allFields = Object.entries(schemas).flatMap(([name, schema]) => fields(schema, name));

describe("the JSON Schemas", () => {
  it("describe every component and every field", () => {
    const silent = [...Object.entries(schemas), ...allFields].filter(([, { description }]) => !description);
    expect(silent.map(([path]) => path)).toEqual([]);
  });

  it("give every field an example, unless it is an object with examples of its own", () => {
    const isObject = ({ $ref }: JsonSchema) =>
      $ref !== undefined && schemas[$ref.slice(0, -1)]?.type === "object";
    const bare = allFields.filter(([, schema]) => !isObject(schema) && !schema.examples?.length);
    expect(bare.map(([path]) => path)).toEqual([]);
  });

  it("give every number a unit and a range", () => {
    const numbers = allFields
      .map(([path, schema]): [string, JsonSchema] => [path, schema.items ?? schema])
      .filter(
        ([, { type, const: fixed }]) => (type === "number" || type === "integer") && fixed === undefined,
      );
    expect(numbers.length).toBeGreaterThan(80);
    const bare = numbers.filter(
      ([, schema]) => !schema["x-unit"] || schema.minimum === undefined || schema.maximum === undefined,
    );
    expect(bare.map(([path]) => path)).toEqual([]);
  });

  it("give every number of an answer its decimals", () => {
    const inputs =
      /^(Scene|ResolvedScene|MountingScene|ResolvedMountingScene|StepRing|Lamp|ResolvedLamp|KdSample|KitItem|ResolvedKitItem|KitPiece|TripDive|TripPiece|ShelfPiece|ShelfRing|CardFrame|DiveClip|DiveEvent|DiveSample|FilterSample|CardSample|TransmittanceSample|ReflectanceSample|RecordingPoint|SensorSample|CloudForecast|\w*Look|\w*Request|QuizResponse|\w*Problem)\//;
    const bare = allFields
      .map(([path, schema]): [string, JsonSchema] => [path, schema.items ?? schema])
      .filter(([path, { type }]) => (type === "number" || type === "integer") && !inputs.test(path))
      .filter(([, schema]) => schema["x-decimals"] === undefined);
    expect(bare.map(([path]) => path)).toEqual([]);
  });

  // The independent reader of JSON Schema here is Ajv.
  it("are valid, and their examples and defaults keep them", () => {
    const ajv = new Ajv({ strict: true, allErrors: true, keywords: ["x-unit", "x-decimals"] });
    for (const [name, schema] of Object.entries(schemas)) ajv.addSchema({ ...schema, $id: name });
    const broken = allFields.flatMap(([path, schema]) => {
      const { examples = [], default: fallback, ...rest } = schema;
      const values = [...examples, ...(fallback === undefined ? [] : [fallback])];
      const validate = ajv.compile(rest);
      return values
        .filter((value) => !validate(value))
        .map((value) => `${path}: ${JSON.stringify(value)} ${ajv.errorsText(validate.errors)}`);
    });
    expect(broken).toEqual([]);
  });

  it("are what the generated module holds", () => {
    const file = new URL("../generated/wire-schemas.ts", import.meta.url);
    const same = readFileSync(file, "utf8") === wireSchemasModule();
    expect(same, "run `npm run generate` and commit what it wrote").toBe(true);
  });

  it("are, with all that describes them, what the other generated module holds", () => {
    const file = new URL("../generated/described-schemas.ts", import.meta.url);
    const same = readFileSync(file, "utf8") === describedSchemasModule();
    expect(same, "run `npm run generate` and commit what it wrote").toBe(true);
    expect(describedSchemas).toEqual(schemas);
  });
});

describe("the converter", () => {
  it("refuses a schema that says nothing, as it makes of zod 4", () => {
    const four: unknown = z4.object({ depth_m: z4.number() });
    expect(() => componentSchemas({ Dive: four as z.ZodTypeAny })).toThrow("says nothing");
    expect(() => componentSchemas({ Dive: z.object({ any: z.unknown() }) })).toThrow("Dive/any says nothing");
  });

  it("refuses keywords that the readers of the schemas do not know", () => {
    expect(() => componentSchemas({ Name: z.object({ a: z.string().email() }) })).toThrow(
      "unknown keyword: format",
    );
  });

  it("refers to a component wherever it is used, with the description of the place", () => {
    const Kind = z.enum(["a", "b"]).describe("A kind.");
    const converted = componentSchemas({
      Kind,
      Thing: z.object({ kind: Kind.describe("Its kind.").optional() }),
    });
    expect(converted["Thing"]?.properties?.["kind"]).toEqual({ $ref: "Kind#", description: "Its kind." });
    expect(converted["Kind"]).toEqual({ type: "string", enum: ["a", "b"], description: "A kind." });
  });

  it("leaves answers open to further fields, and requests closed", () => {
    expect(schemas["Scene"]?.additionalProperties).toBe(false);
    expect(schemas["Lamp"]?.additionalProperties).toBe(false);
    expect(schemas["MountingScene"]?.additionalProperties).toBe(false);
    expect(schemas["FilterChoiceAnswer"]).not.toHaveProperty("additionalProperties");
  });
});

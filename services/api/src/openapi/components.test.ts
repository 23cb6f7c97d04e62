import { type JsonSchema, problemCodes, problemComponent } from "@sunfathom/contract";
import { describedSchemas } from "@sunfathom/contract/described";
import { waysOf } from "@sunfathom/contract/ways";
import { problemPage } from "@sunfathom/words";
import { describe, expect, it } from "vitest";
import { fieldsOf, schemaOf, sharedSchemas } from "./components.js";
import { described } from "./described.js";
import { saidCodes } from "./said-codes.js";

type Node = Record<string, unknown>;

const isNode = (value: unknown): value is Node => typeof value === "object" && value !== null;

/** Every object within a value, itself included. */
function within(value: unknown): Node[] {
  return isNode(value) ? [value, ...Object.values(value).flatMap(within)] : [];
}

/** The schema as the contract has it: what stands in an `allOf` of one comes out of it, and of the codes listed the first is left. */
function asInContract(name: string, schema: unknown): unknown {
  const { properties, ...rest } = unwrapped(schema) as Node;
  if (!isNode(properties)) return rest;
  const fields = Object.entries(properties).map(([field, property]) => {
    if (saidCodes[name]?.[field] === undefined) return [field, property];
    const { examples, ...told } = property as { examples: string[] };
    return [field, { ...told, examples: examples.slice(0, 1) }];
  });
  return { ...rest, properties: Object.fromEntries(fields) };
}

function unwrapped(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(unwrapped);
  if (!isNode(value)) return value;
  const { allOf, ...rest } = value;
  const inner = Array.isArray(allOf) ? allOf[0] : {};
  return Object.fromEntries(
    Object.entries({ ...inner, ...rest }).map(([key, item]) => [key, unwrapped(item)]),
  );
}

describe("the schemas that routes share", () => {
  it("are all of the contract's, each with its name, and lose nothing of what they say", () => {
    const shared = sharedSchemas() as Node[];
    const named = Object.fromEntries(
      shared.map(({ $id, "x-ways": _, ...schema }) => [$id, asInContract(String($id), schema)]),
    );
    expect(named).toEqual(described);
    expect(Object.keys(described)).toEqual(Object.keys(describedSchemas));
  });

  it("say of what is given in one of several ways which these are", () => {
    const shared = sharedSchemas() as Node[];
    const said = shared.filter((schema) => schema["x-ways"] !== undefined);
    expect(Object.fromEntries(said.map(({ $id, "x-ways": ways }) => [$id, ways]))).toEqual(waysOf);
  });

  it.each(problemCodes)("say of %s what its page says, and else what the contract says", (code) => {
    const { title, explanation } = problemPage(code);
    const { description, properties: fields, ...rest } = schemaOf(problemComponent(code));
    const { description: _, properties: own = {}, ...plain } = describedSchemas[problemComponent(code)] ?? {};
    expect(description).toBe(`${title} ${explanation}`);
    expect(rest).toEqual(plain);
    expect(fields).toEqual({
      ...own,
      title: { ...own["title"], examples: [title] },
      detail: { ...own["detail"], examples: [title] },
    });
  });

  it.each(
    Object.entries(saidCodes).flatMap(([name, fields]) => Object.keys(fields).map((field) => [name, field])),
  )("list every code that %s may have as its %s, each once, in the open", (name, field) => {
    const schema = (sharedSchemas() as Node[]).find(({ $id }) => $id === name);
    const { examples, description } = ((schema?.["properties"] ?? {}) as Record<string, Node>)[field];
    expect([...(examples as string[])].sort()).toEqual([...(saidCodes[name]?.[field] ?? [])].sort());
    expect(description).toMatch(/^[A-Z].+\.$/);
  });

  // JSON Schema before 2019-09, section 8.3 of draft 7, ignored what stands beside a $ref, as the writer does.
  it("have nothing beside a reference, and wrap none without need", () => {
    const all = sharedSchemas().flatMap(within);
    const references = all.filter(({ $ref }) => typeof $ref === "string");
    expect(references.length).toBeGreaterThan(50);
    for (const one of references) expect(Object.keys(one)).toEqual(["$ref"]);
    const wrappers = all.filter(({ allOf }) => allOf !== undefined);
    expect(wrappers.length).toBeGreaterThan(10);
    for (const { allOf, ...neighbours } of wrappers) {
      expect(allOf).toEqual([{ $ref: expect.any(String) }]);
      expect(Object.keys(neighbours).length).toBeGreaterThan(0);
    }
  });
});

describe("a component", () => {
  it("is had by its name, and its fields with it", () => {
    const scene: JsonSchema = schemaOf("Scene");
    expect(scene).toBe(described["Scene"]);
    expect(Object.fromEntries(fieldsOf("Scene"))).toEqual(scene.properties);
  });

  it("that there is not has no fields, and is an error that names it where it must be there", () => {
    expect(fieldsOf("Scenery")).toEqual([]);
    expect(() => schemaOf("Scenery")).toThrow("Scenery");
  });

  it("without fields of its own has none", () => {
    expect(schemaOf("WaterType").properties).toBeUndefined();
    expect(fieldsOf("WaterType")).toEqual([]);
  });
});

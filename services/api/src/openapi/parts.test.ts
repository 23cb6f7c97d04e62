// What answers with `fields` look like is told by schemas, which an independent validator (Ajv, JSON Schema 2020-12 as OpenAPI 3.1 has it)
// holds real answers to.
import { readFileSync } from "node:fs";
import Ajv from "ajv/dist/2020.js";
import { afterAll, describe, expect, it } from "vitest";
import { buildApp } from "../build-app.test-support.js";
import { operations } from "../operations.js";
import { isObject, type Json, type JsonObject } from "./json.js";

const file = new URL("../../../../openapi/openapi.json", import.meta.url);
const description = JSON.parse(readFileSync(file, "utf8"));
const ajv = new Ajv.default({ strict: false, validateFormats: false });
ajv.addSchema({ $id: "description", components: description.components });

const app = buildApp();
afterAll(async () => (await app).close());

/** Dotted names of all fields of an answer, those within lists by the list's name. */
function namesIn(value: Json, before = ""): string[] {
  if (Array.isArray(value)) return value.flatMap((item) => namesIn(item, before));
  if (!isObject(value)) return [];
  return Object.entries(value).flatMap(([name, inner]) => [
    `${before}${name}`,
    // Parameters of texts are asked for as a whole.
    ...(name === "parameters" ? [] : namesIn(inner, `${before}${name}.`)),
  ]);
}

describe.each(operations)("$name", ({ path, examples: [example] }) => {
  const { content } = description.paths[path].post.responses["200"];
  const { schema: whole, "x-fields-schemas": told } = content["application/json"];
  const validates = ({ $ref }: { $ref: string }) => ajv.compile({ $ref: `description${$ref}` });
  const ask = async (fields = "") => {
    const url = `${path}${fields === "" ? "" : `?fields=${fields}`}`;
    const answer = await (await app).inject({ method: "POST", url, payload: example?.scene ?? {} });
    expect([fields, answer.statusCode]).toEqual([fields, 200]);
    return answer.json() as JsonObject;
  };

  it("has a schema for its brief form and for every field alone, by GET and by POST", async () => {
    const get = description.paths[path].get.responses["200"].content["application/json"];
    expect(get["x-fields-schemas"]).toEqual(told);
    const [isWhole, isPart, isBrief] = [validates(whole), validates(told.names), validates(told.brief)];
    const answer = await ask();
    expect(isWhole(answer)).toBe(true);
    expect(isPart(answer)).toBe(true);
    expect(isBrief(await ask("brief"))).toBe(true);
    const names = [...new Set(namesIn(answer))];
    expect(names.length).toBeGreaterThan(20);
    // One of a few each time, so that each kind of field within another comes alone.
    for (const name of names.filter((_, nth) => nth % 4 === 0)) {
      const part = await ask(name);
      expect([name, isPart(part), isPart.errors]).toEqual([name, true, null]);
      if (name !== "cautions") expect(isWhole(part)).toBe(false);
    }
    expect(isPart({})).toBe(false);
    const [number] = Object.entries(answer).find(([, value]) => isObject(value)) ?? [];
    expect(isPart({ ...answer, [number ?? ""]: "text" })).toBe(false);
  });
});

// What the page of the reference makes of the description in the browser: requests that are answered at once, written out rightly.
import { readFileSync } from "node:fs";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { drawable } from "../pictures/draw.js";
import { sheetOperations } from "../sheets/index.js";
import { tripOperations } from "../trips/index.js";

interface Parameter {
  name: string;
  in: string;
  schema: { default?: unknown; enum?: unknown; examples?: unknown };
}
interface Operation {
  operationId: string;
  parameters: Parameter[];
  requestBody?: { content: Record<string, { examples: Record<string, { value: object }> }> };
  "x-code-samples": { label: string; source: string }[];
}
interface Prepared {
  servers: { url: string }[];
  paths: Record<string, Record<string, Operation>>;
}
interface Call {
  id: string;
  title: string;
  text: string;
}

const own = (name: string) => new URL(`../../../docs/${name}`, import.meta.url).href;
const address = "https://light.example.org/under/a/path";
const client = readFileSync(
  new URL("../../../../../packages/sdk/src/generated/api.ts", import.meta.url),
  "utf8",
);
const batches = readFileSync(
  new URL("../../../../../packages/sdk/src/core/batches.ts", import.meta.url),
  "utf8",
);

let app: FastifyInstance;
let prepared: Prepared;
let calls: Call[];
let matching: (calls: Call[], words: string) => Call[];
beforeAll(async () => {
  app = await buildApp();
  const { prepare } = await import(own("samples.js"));
  const search = await import(own("search.js"));
  prepared = prepare((await app.inject("/openapi.json")).json(), address);
  calls = search.searchable(prepared);
  matching = search.matching;
});
afterAll(() => app.close());

const all = () =>
  Object.entries(prepared.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
  );

describe("a form", () => {
  it("is filled in with a request that is answered", async () => {
    expect(prepared.servers).toEqual([{ url: address }]);
    expect(all()).toHaveLength(26 + 2 * drawable.length + sheetOperations.length + tripOperations.length);
    for (const { path, method, operation } of all()) {
      if (operation.operationId === "markAnswers") continue;
      const filled = operation.parameters.filter(({ schema }) => schema.default !== undefined);
      const url = filled
        .filter((one) => one.in === "path")
        .reduce((url, { name, schema }) => url.replace(`{${name}}`, String(schema.default)), path);
      const query = filled
        .filter((one) => one.in === "query")
        .map(({ name, schema }) => [name, String(schema.default)]);
      const [first] = Object.values(operation.requestBody?.content["application/json"]?.examples ?? {});
      const reply = await app.inject({
        method: method === "get" ? "GET" : "POST",
        url: query.length === 0 ? url : `${url}?${new URLSearchParams(query)}`,
        ...(first === undefined ? {} : { payload: first.value }),
      });
      expect([method, path, reply.statusCode, reply.statusCode === 200 ? "" : reply.payload]).toEqual([
        method,
        path,
        200,
        "",
      ]);
    }
  });

  // What a form would send without being asked: the first of a list, or an example of each field.
  it("sends nothing else", () => {
    for (const { operation } of all())
      for (const { schema, in: place } of operation.parameters) {
        expect(place).not.toBe("header");
        expect(schema).not.toHaveProperty("enum");
        expect(schema).not.toHaveProperty("examples");
      }
  });
});

describe("the samples", () => {
  it("are a line for the shell and a program, with this service's address", () => {
    for (const { operation } of all()) {
      const samples = operation["x-code-samples"];
      expect(samples.map(({ label }) => label)).toEqual(["curl", "TypeScript"]);
      for (const { source } of samples) expect(source).toContain(address);
    }
  });

  it("name methods that the client has", () => {
    for (const { operation } of all()) {
      const [, group = "", method = ""] =
        /(?:await|of) client\.(\w+)\.(\w+)\(/.exec(operation["x-code-samples"][1]?.source ?? "") ?? [];
      // A stream is read line by line, by the part of the client that is not generated.
      if (group === "batches") {
        expect(batches).toMatch(new RegExp(`^ {2}${method}<`, "m"));
        continue;
      }
      const [, inGroup = ""] = client.split(new RegExp(`export class ${group}\\b`, "i"));
      expect(inGroup.split("export class")[0], `${group}.${method}`).toMatch(
        new RegExp(`^ {2}${method}\\(`, "m"),
      );
    }
  });
});

describe("the search", () => {
  it.each([
    ["white balance", "post-/v1/white-balance"],
    ["quiz", "post-/v1/quiz-items"],
    ["kit", "post-/v1/kit-advice"],
    ["subject_facing", "post-/v1/attenuation"],
    ["sheet_thickness", "post-/v1/filter-mounting"],
    ["KINDS of filter", "get-/v1/filter-kinds"],
  ])("for %s finds %s first", (words, id) => expect(matching(calls, words)[0]?.id).toBe(id));

  it("for nothing, or for what there is not, finds nothing", () => {
    for (const words of ["", "  ", "periscope", "quiz periscope"]) expect(matching(calls, words)).toEqual([]);
  });
});

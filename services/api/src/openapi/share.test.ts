import { describe, expect, it } from "vitest";
import type { Json, JsonObject } from "./json.js";
import { share } from "./share.js";

const problem = (...codes: string[]): JsonObject => ({
  description: codes.join(),
  content: { "application/problem+json": { examples: Object.fromEntries(codes.map((code) => [code, {}])) } },
});
const answer = { description: "It is.", content: { "application/json": { schema: {} } } };
const query = (name: string, description: string) => ({ in: "query", name, description });

function shared(paths: Json, more: JsonObject = {}) {
  const document = { openapi: "3.1.0", paths, ...more };
  const before = JSON.stringify(document);
  const result = share(document);
  expect(JSON.stringify(document)).toBe(before);
  return result;
}

describe("what many operations say alike", () => {
  it("is said once: the problems of a response under their codes, all else where it was", () => {
    const responses = { 200: answer, 400: problem("malformed"), 422: problem("late", "lost") };
    const { paths, components }: JsonObject = shared({
      "/a": { get: { responses }, post: { responses } },
      "/b": { get: {} },
    });
    const references = {
      200: answer,
      400: { $ref: "#/components/responses/malformed" },
      422: { $ref: "#/components/responses/late-or-lost" },
    };
    expect(paths).toEqual({
      "/a": { get: { responses: references }, post: { responses: references } },
      "/b": { get: { responses: {} } },
    });
    expect(components).toEqual({
      parameters: {},
      responses: { malformed: problem("malformed"), "late-or-lost": problem("late", "lost") },
    });
  });

  it("is said where it is used where two say different things under one name", () => {
    const one = query("depth_m", "Depth of the subject.");
    const other = query("depth_m", "Depth of the port.");
    const operation = (...parameters: Json[]) => ({ get: { parameters, responses: {} } });
    const { paths, components }: JsonObject = shared({
      "/a": operation(one),
      "/b": operation(other),
      "/c": operation(one),
    });
    const reference = { $ref: "#/components/parameters/depth_m" };
    expect(paths).toEqual({ "/a": operation(reference), "/b": operation(other), "/c": operation(reference) });
    expect(components).toEqual({ parameters: { depth_m: one }, responses: {} });
  });

  it("is parameters of a query alone, each with a name", () => {
    const parameters = [
      { in: "header", name: "If-None-Match" },
      { in: "path", name: "name" },
      { in: "query" },
      { in: "query", name: 5 },
      null,
      "text",
    ];
    const paths = { "/a": { get: { operationId: "a", parameters, responses: {} } } };
    expect(shared(paths)).toMatchObject({ paths, components: { parameters: {} } });
  });

  it("leaves alone what is no operation, no problem, and every other part of the document", () => {
    const paths = {
      "/a": {
        summary: "A path",
        parameters: [query("depth_m", "")],
        get: {
          responses: {
            204: { description: "" },
            304: { content: null },
            400: { content: { "application/problem+json": {} } },
            500: { content: { "application/problem+json": { examples: [] } } },
            501: "text",
          },
        },
      },
    };
    const more = { info: { title: "" }, components: { schemas: { A: {} } } };
    expect(shared(paths, more)).toEqual({
      openapi: "3.1.0",
      paths,
      info: { title: "" },
      components: { schemas: { A: {} }, parameters: {}, responses: {} },
    });
  });

  it("is nothing where there are no paths", () => {
    expect(share({})).toEqual({ paths: {}, components: { parameters: {}, responses: {} } });
  });
});

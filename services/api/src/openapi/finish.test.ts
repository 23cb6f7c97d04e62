import { expect, it } from "vitest";
import { finish } from "./finish.js";

const reference = { $ref: "#/components/schemas/Scene" };
const depth = { name: "depth_m", in: "query", schema: { type: "number" }, example: 12 };

function written() {
  const lost = { description: "Lost.", content: { "application/problem+json": { examples: { lost: {} } } } };
  const operation = { parameters: [depth], responses: { 404: lost }, requestBody: { allOf: [reference] } };
  return {
    openapi: "3.1.0",
    // Names that mean something in paths, and nothing in a component.
    components: { schemas: { Scene: { in: "query", example: 5, schema: {} } } },
    paths: { "/a": { get: operation, post: operation } },
    later: undefined,
  };
}

it("the description is put in order and shared in its paths, and its components stay as they are", () => {
  const given = written();
  const { paths, components } = JSON.parse(JSON.stringify(finish(given)));
  expect(given).toEqual(written());
  const operation = {
    parameters: [{ $ref: "#/components/parameters/depth_m" }],
    responses: { 404: { $ref: "#/components/responses/lost" } },
    requestBody: reference,
  };
  expect(paths).toEqual({ "/a": { get: operation, post: operation } });
  expect(components).toEqual({
    schemas: written().components.schemas,
    parameters: { depth_m: { name: "depth_m", in: "query", schema: { type: "number", examples: [12] } } },
    responses: { lost: given.paths["/a"].get.responses[404] },
  });
});

it("the description is plain JSON, also without a path", () => {
  const { later, ...rest } = written();
  expect(Object.keys(finish({ ...rest, later }))).not.toContain("later");
  expect(finish({})).toEqual({ paths: {}, components: { parameters: {}, responses: {} } });
});

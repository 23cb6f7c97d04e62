import { expect, it } from "vitest";
import { exemplify } from "./exemplify.js";
import type { JsonObject } from "./json.js";

const answered = (): JsonObject => ({ 200: { content: { "application/json": {} } } });
const written = (): JsonObject => ({
  components: {},
  paths: {
    "/v1/light": {
      get: {
        parameters: [
          { name: "depth_m", in: "query" },
          { name: "iso", in: "query" },
          { name: "depth_m", in: "header" },
        ],
        responses: answered(),
      },
      post: {
        requestBody: {
          content: {
            "application/json": {
              examples: { first: { value: { depth_m: 5 } }, next: { value: { iso: 100 } } },
            },
          },
        },
        responses: answered(),
      },
    },
    "/v1/other": { get: { responses: answered() } },
  },
});
const light = { summary: "Light", value: { left: 1 } };

it("shows an answer by both methods, and the first scene in the query alone", () => {
  const media = { examples: { light: { $ref: "#/components/examples/light" } } };
  const responses = { 200: { content: { "application/json": media } } };
  const given = exemplify(written(), { light, unheard: light });
  expect(given).toMatchObject({
    components: { examples: { light } },
    paths: {
      "/v1/light": { get: { responses }, post: { responses } },
      "/v1/other": { get: { responses: answered() } },
    },
  });
  const { paths } = given as unknown as { paths: Record<string, { get: { parameters: object[] } }> };
  expect(paths["/v1/light"]?.get.parameters).toEqual([
    { name: "depth_m", in: "query", example: 5 },
    { name: "iso", in: "query" },
    { name: "depth_m", in: "header" },
  ]);
  expect(given["components"]).toEqual({ examples: { light } });
});

it("leaves a description as it is where there is no answer to show", () => {
  expect(exemplify(written(), {})).toEqual(written());
});

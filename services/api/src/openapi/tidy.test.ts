import { describe, expect, it } from "vitest";
import { tidy } from "./tidy.js";

describe("a reference that was wrapped", () => {
  it("stands alone again, however deep", () => {
    const $ref = "#/components/schemas/Scene";
    expect(tidy({ a: [{ schema: { allOf: [{ $ref }] } }] })).toEqual({ a: [{ schema: { $ref } }] });
    expect(tidy({ allOf: [{ allOf: [{ $ref }] }] })).toEqual({ $ref });
  });

  it.each([
    { allOf: [{ $ref: "#/a" }], description: "Kept." },
    { allOf: [] },
    { allOf: "text" },
    { anyOf: [{ $ref: "#/a" }] },
  ])("stays wrapped, or was none, in %j", (value) => {
    expect(tidy(value)).toEqual(value);
  });
});

describe("the example of a parameter", () => {
  // JSON Schema 2020-12, validation, section 9.5: examples are a list.
  it("goes back into its schema, where nothing is sent from", () => {
    const parameter = {
      name: "depth_m",
      in: "query",
      schema: { type: "number" },
      example: 12,
      required: true,
    };
    const { example, ...rest } = parameter;
    expect(tidy([parameter])).toEqual([{ ...rest, schema: { type: "number", examples: [example] } }]);
    expect(tidy({ ...parameter, example: null })).toMatchObject({ schema: { examples: [null] } });
  });

  it.each([
    ["is none", { name: "a", in: "query", schema: { type: "number" } }],
    ["is of something else", { example: 12, schema: { type: "number" } }],
    ["is of a field called in", { in: { type: "number" }, example: 12, schema: {} }],
    ["has no schema to go to", { in: "query", example: 12 }],
  ])("stays where it %s", (_, value) => {
    expect(tidy(value)).toEqual(value);
  });
});

it.each([null, true, 1, "text", [], {}])("%j is tidy", (value) => {
  expect(tidy(value)).toEqual(value);
});

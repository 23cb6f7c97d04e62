import { expect, it } from "vitest";
import { schemaOf } from "./components.js";
import { withoutReference } from "./without-reference.js";

it("a schema that refers to nothing stays as it is", () => {
  const schema = { type: "number", minimum: 0 } as const;
  expect(withoutReference(schema)).toEqual(schema);
});

it("a schema that refers to a component says what that says, and what it says itself before that", () => {
  const description = "The water at the wreck.";
  const schema = withoutReference({ $ref: "WaterType#", description });
  expect(schema).not.toHaveProperty("$ref");
  expect(schema.enum?.length).toBeGreaterThan(5);
  expect(schema).toEqual({ ...schemaOf("WaterType"), description });
  expect(schemaOf("WaterType").description).not.toBe(description);
});

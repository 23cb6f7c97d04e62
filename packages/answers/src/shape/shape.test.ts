import { describe, expect, it } from "vitest";
import { shapeOf } from "./shape.js";

const figure = shapeOf("Figure");
const reason = shapeOf("Reason");

describe("the form in which an answer leaves", () => {
  it("has the contract's order and decimals", () => {
    const shaped = reason({
      figures: [{ value: 1.00005, name: "a" }],
      basis: "computed",
      text: "Text.",
      code: "code",
      parameters: { b: { kind: "red", densities: [1.00000049, 0.5] }, a: true, left_out: undefined },
    });
    expect(JSON.stringify(shaped)).toBe(
      '{"code":"code","text":"Text.","basis":"computed","figures":[{"name":"a","value":1.0001}],"parameters":{"b":{"kind":"red","densities":[1,0.5]},"a":true}}',
    );
  });

  it("leaves out what is undefined and may be absent", () => {
    const error = { pointer: "", code: "a", message: "b", allowed: "c", did_you_mean: undefined };
    expect(JSON.stringify(shapeOf("FieldError")(error))).not.toContain("did_you_mean");
  });

  it("keeps what the contract leaves open, but no number that is none, and nothing that is null", () => {
    const parametersOf = (parameters: unknown) =>
      shapeOf("FieldError")({ pointer: "", code: "a", message: "b", allowed: "c", parameters });
    expect(parametersOf({ a: [{ b: "c" }] })).toMatchObject({ parameters: { a: [{ b: "c" }] } });
    expect(() => parametersOf({ a: Number.NaN })).toThrow("FieldError/parameters must be a finite number");
    expect(() => parametersOf({ a: null })).toThrow("FieldError/parameters must be a finite number");
  });

  it.each([
    ["not a number", { name: "a", value: Number.NaN }, "Figure/value must be a finite number"],
    ["infinite", { name: "a", value: Number.POSITIVE_INFINITY }, "Figure/value must be a finite number"],
    ["null", { name: "a", value: null }, "Figure/value must be a finite number"],
    ["missing", { name: "a" }, "Figure/value must be there"],
    ["of another type", { name: 1, value: 1 }, "Figure/name must be a string"],
    ["unknown to the contract", { name: "a", value: 1, unit: "m" }, "Figure must be without fields"],
    ["no object", [], "Figure must be an object"],
  ])("refuses what is %s", (_, value, message) => {
    expect(() => figure(value)).toThrow(message);
  });
});

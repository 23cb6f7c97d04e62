import { en } from "@sunfathom/words/en";
import { sceneProblems } from "@sunfathom/words/en/problems";
import fc from "fast-check";
import { expect, it } from "vitest";
import { operationsIn } from "../operations/table.js";
import { readable } from "./readable.js";

it("leaves six figures of a number, wherever it stands", () => {
  const sent = { value: 41.12345678901234, low: { value: 0.1 + 0.2, field: "iso" }, all: [1 / 3, "a"] };
  expect(readable(sent)).toEqual({ value: 41.1235, low: { value: 0.3, field: "iso" }, all: [0.333333, "a"] });
});

it.each([
  [
    { value: 0.1 + 0.2, maximum: 0.3 },
    { value: 0.30000000000000004, maximum: 0.3 },
  ],
  [
    { value: 100.0000012345, maximum: 100 },
    { value: 100.000001, maximum: 100 },
  ],
  [
    { value: 3.00000012345, maximum: 8 },
    { value: 3.0000001, maximum: 8 },
  ],
])("keeps what tells %j apart", (sent, told) => {
  expect(readable(sent)).toEqual(told);
});

it("never makes two numbers one, nor turns their order, nor makes one whole that is not", () => {
  // A zero with a sign is the same number to whoever reads it, and JSON has none.
  const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0);
  fc.assert(
    fc.property(number, number, (a, b) => {
      const told = readable({ a, b });
      expect(Math.sign(told.a - told.b)).toBe(Math.sign(a - b));
      expect(Number.isInteger(told.a)).toBe(Number.isInteger(a));
    }),
  );
});

it("is what people read, and no program", () => {
  const [attenuation] = operationsIn(en, sceneProblems);
  const depth_m = 100.12345678901234;
  const outcome = attenuation?.reply({ water_type: "IB", sun_elevation_deg: 50, depth_m });
  if (outcome?.status !== "problem") throw new Error("answered");
  expect(outcome.problem.detail).toContain("100.123 m");
  expect(outcome.problem.errors?.[0]).toMatchObject({
    message: "100.123 m is too high.",
    allowed: "0.1 to 100 m",
    parameters: { value: depth_m },
  });
});

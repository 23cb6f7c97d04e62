import { expect, it } from "vitest";
import { step } from "./step.js";

it("a step is computed unless told otherwise, and has what its text is made of", () => {
  expect(step({ phase: "before_dive" }, "no_filter", { error: 12.34 })).toStrictEqual({
    phase: "before_dive",
    code: "no_filter",
    parameters: { error: 12.34 },
    basis: "computed",
  });
  expect(step({ phase: "before_dive" }, "lamps_off_before_air").parameters).toStrictEqual({});
});

it("a step may have a depth, the surface too, and another basis", () => {
  const at = { phase: "going_down", depth_m: 0, basis: "common_practice" } as const;
  expect(step(at, "no_filter", { error: 1 })).toMatchObject(at);
});

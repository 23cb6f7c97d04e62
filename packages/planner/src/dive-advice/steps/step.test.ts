import { expect, it } from "vitest";
import { step } from "./say-step.js";
import { STEPS_EN } from "./steps-en.js";

it("a step is computed unless told otherwise, and has its texts and its numbers as figures", () => {
  const { text, why } = STEPS_EN.no_filter({ error: 12.34 });
  expect(step({ phase: "before_dive" }, "no_filter", { error: 12.34 })).toStrictEqual({
    phase: "before_dive",
    code: "no_filter",
    text,
    why,
    basis: "computed",
    figures: [{ name: "error", value: 12.34 }],
  });
});

it("a step may have a depth, the surface too, and another basis", () => {
  const at = { phase: "going_down", depth_m: 0, basis: "common_practice" } as const;
  expect(step(at, "no_filter", { error: 1 })).toMatchObject(at);
});

// What brings each step after the dive.
import { expect, it } from "vitest";
import { daylightScene, NIGHT_WRECK, OUTER_REEF_MORNING } from "../../../../../test/support/scenes.js";
import { decided, parametersIn, toldBy } from "../decided.test-support.js";
import type { Decisions } from "../decisions.js";
import { afterDive } from "./after.js";

const reef = decided(OUTER_REEF_MORNING);
const shallow = decided(daylightScene("IB", 45, 1.5));
const rinsed = (d: Decisions) => afterDive(d).find(({ code }) => code === "rinse")?.parameters;

it("red is told for the grade where the dive goes deeper than it is recorded well", () => {
  const red = { acceptable_m: 17, gone_m: 30 };
  const steps = afterDive({ ...reef, red });
  expect(toldBy(steps)).toEqual([
    ["after_dive", "grade_red", undefined],
    ["after_dive", "rinse", undefined],
  ]);
  // The dive goes to 18 m: what is at 30 is nobody's concern there.
  expect(parametersIn(steps, "grade_red")).toEqual({ acceptable_m: 17 });
  const lost = { acceptable_m: 12, gone_m: 16 };
  expect(parametersIn(afterDive({ ...reef, red: lost }), "grade_red")).toEqual(lost);
  expect(steps.map(({ basis }) => basis)).toEqual(["computed", "common_practice"]);
  for (const acceptable_m of [18, 19]) {
    expect(toldBy(afterDive({ ...reef, red: { ...red, acceptable_m } }))).toEqual([
      ["after_dive", "rinse", undefined],
    ]);
  }
  expect(toldBy(afterDive({ ...reef, red: undefined }))).toEqual([["after_dive", "rinse", undefined]]);
});

it("what was under water is rinsed: the housing always, a filter and lamps where there are any", () => {
  expect(rinsed(reef)).toEqual({ gear: ["housing", "filter"] });
  expect(rinsed(decided(NIGHT_WRECK))).toEqual({ gear: ["housing", "lamps"] });
  expect(rinsed(shallow)).toEqual({ gear: ["housing"] });
});

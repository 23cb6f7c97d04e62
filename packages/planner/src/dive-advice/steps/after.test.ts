// What brings each step after the dive.

import { daylightScene, NIGHT_WRECK, OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { expect, it } from "vitest";
import { decided, FLIPPED, parametersIn, toldBy } from "../decided.test-support.js";
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

it("no red is told where the dive begins below its end", () => {
  const red = { acceptable_m: 2, gone_m: 4 };
  const told = (d: Decisions) => parametersIn(afterDive({ ...d, red }), "grade_no_red");
  expect(told(reef)).toEqual({ gone_m: 4, from_start: true });
  expect(told(decided(daylightScene("IB", 45, 3, 9)))).toEqual({ gone_m: 4 });
});

it("what was under water is rinsed: the housing always, lamps and a filter that the water reached", () => {
  expect(rinsed(reef)).toEqual({ gear: ["housing"] });
  expect(rinsed(decided(FLIPPED))).toEqual({ gear: ["housing", "filter"] });
  expect(rinsed(decided(NIGHT_WRECK))).toEqual({ gear: ["housing", "lamps"] });
  expect(rinsed(shallow)).toEqual({ gear: ["housing"] });
});

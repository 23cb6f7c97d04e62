import { NIGHT_WRECK } from "@sunfathom/fixtures/scenes";
import { expect, it } from "vitest";
import { decided, FLIPPED } from "../decided.test-support.js";
import { afterDive } from "./after.js";
import { beforeDive } from "./before.js";
import { goingDown } from "./down.js";
import { lampSteps } from "./lamps.js";
import { atStart } from "./start.js";
import { stepsOf } from "./steps.js";
import { comingUp } from "./up.js";

it("the plan is all of it, in the order of the dive: on land, at the start, down, lamps, up, and after", () => {
  for (const scene of [FLIPPED, NIGHT_WRECK]) {
    const d = decided(scene);
    const parts = [beforeDive, atStart, goingDown, lampSteps, comingUp, afterDive].map((part) => part(d));
    expect(stepsOf(d).map(({ code }) => code)).toEqual(parts.flat().map(({ code }) => code));
    expect(parts.filter((part) => part.length > 0).length).toBeGreaterThanOrEqual(5);
  }
});

it("an exposure time of a step's own is set back by the next step that sets the camera", () => {
  const set = stepsOf(decided(FLIPPED)).flatMap(({ parameters }) =>
    "f_number" in parameters ? [parameters] : [],
  );
  const times = set.map((parameters) =>
    "shutter" in parameters ? parameters.shutter?.shutter_s : undefined,
  );
  const own = times.findIndex((time) => time !== undefined);
  expect(times[own]).toBeLessThan(FLIPPED.shutter_s);
  expect(times[own + 1]).toBe(FLIPPED.shutter_s);
  // From there on the plan's own goes without saying, until another step leaves it.
  expect(times[own + 2]).toBeUndefined();
});

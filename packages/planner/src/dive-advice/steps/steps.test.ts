import { expect, it } from "vitest";
import { NIGHT_WRECK } from "../../../../../test/support/scenes.js";
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
    expect(stepsOf(d)).toEqual(parts.flat());
    expect(parts.filter((part) => part.length > 0).length).toBeGreaterThanOrEqual(5);
  }
});

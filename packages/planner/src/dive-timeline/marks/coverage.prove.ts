// That the plan is marked as surely as it says: on simulated truths, 80 % intervals hold what is right in 75 to 85 of 100 cases.
import { expect, it } from "vitest";
import { coverageOver } from "./coverage.test-support.js";

/** Dives that nobody looked at while the fit was written: those below a thousand were. */
const FIRST_SEED = Number(process.env["FIRST_SEED"] ?? 10_000);
const DIVES = Number(process.env["TRUTHS"] ?? 900);

it("80 % intervals hold what is right in 75 to 85 % of the cases", () => {
  const all = coverageOver(Array.from({ length: DIVES }, (_, n) => FIRST_SEED + n));
  for (const [marks, { count, predicted, measured }] of Object.entries(all)) {
    console.log(`${marks}: ${count}, predicted ${predicted.toFixed(3)}, measured ${measured.toFixed(3)}`);
    expect.soft(measured, `measured ${marks}`).toBeGreaterThan(0.75);
    expect.soft(measured, `measured ${marks}`).toBeLessThan(0.85);
    // The density of a filter is what its maker says: a claim without an interval.
    if (marks === "filter_density") continue;
    expect.soft(predicted, `predicted ${marks}`).toBeGreaterThan(0.75);
    expect.soft(predicted, `predicted ${marks}`).toBeLessThan(0.85);
  }
});

import type { SceneProblem } from "../scene/scene-problem.js";

/** Thrown where the model has no answer for one of several dives: which of them, and why. */
export class DiveProblem extends Error {
  override readonly name = "DiveProblem";

  constructor(
    /** Place of the dive in the plan. */
    readonly dive: number,
    readonly problem: SceneProblem,
  ) {
    super(`Dive ${dive}: ${problem.message}`);
  }
}

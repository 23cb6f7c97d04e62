import { type ErrorResponse, type ProblemBody, ProblemError } from "../core/errors.js";
import { InvalidSceneError, ModelVersionMismatchError, OutsideTheModelError } from "../generated/problems.js";

/** The kinds of problem that a scene can have. Who asks no service meets no others, and carries no others. */
export const sceneProblemErrors: Readonly<Record<string, typeof ProblemError>> = {
  "/problems/invalid-scene": InvalidSceneError,
  "/problems/model-version-mismatch": ModelVersionMismatchError,
  "/problems/outside-the-model": OutsideTheModelError,
};

/** The error of a problem, as a service's problem would become one. */
export function sceneProblemError(problem: ProblemBody & ErrorResponse): ProblemError {
  return new (sceneProblemErrors[problem.type] ?? ProblemError)(problem, problem);
}

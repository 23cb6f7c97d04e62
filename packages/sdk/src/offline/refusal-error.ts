import { type Refusal, sayRefusal } from "@sunfathom/answers";
import type { SceneProblemTexts } from "@sunfathom/words";
import { sceneProblems } from "@sunfathom/words/en/problems";
import { ProblemError } from "../core/response-errors.js";
import { InvalidSceneError, ModelVersionMismatchError, OutsideTheModelError } from "../generated/problems.js";

export { textsIn } from "./languages.js";

/** The kinds of problem that a scene can have. Who asks no service meets no others, and carries no others. */
export const sceneProblemErrors: Readonly<Record<string, typeof ProblemError>> = {
  "/problems/invalid-scene": InvalidSceneError,
  "/problems/model-version-mismatch": ModelVersionMismatchError,
  "/problems/outside-the-model": OutsideTheModelError,
};

/**
 * The error of what a part refused, in words, as a service's problem would become one.
 * @param texts of the language that was asked for; English ones when left out
 */
export function refusalError(refusal: object, texts: object = sceneProblems): ProblemError {
  const problem = sayRefusal(refusal as Refusal, texts as SceneProblemTexts);
  return new (sceneProblemErrors[problem.type] ?? ProblemError)(problem, problem);
}

import type { Problem } from "@sunfathom/contract";
import { MODEL_VERSION } from "@sunfathom/planner";
import { problemDetails } from "@sunfathom/words";
import { sceneProblem } from "./problem.js";

/** The problem of whoever asks for another version of the model than there is; none where no version is asked for. */
export function otherModel(expected: string | undefined): Problem | undefined {
  if (expected === undefined || expected === MODEL_VERSION) return undefined;
  const detail = problemDetails.otherModel({ expected, is: MODEL_VERSION });
  return sceneProblem("model_version_mismatch", detail);
}

import type { Problem } from "@sunfathom/contract";
import type { SceneProblemTexts } from "@sunfathom/words";
import { sceneProblem } from "./problem.js";

/** The problem of whoever asks for another version of the model than there is. */
export function otherModel(versions: { expected: string; is: string }, words: SceneProblemTexts): Problem {
  return sceneProblem("model_version_mismatch", words, words.details.otherModel(versions));
}

import { type PictureLook, type Problem, pictureLookSchema } from "@sunfathom/contract";
import type { ProblemTexts } from "@sunfathom/words";
import { invalidRequest, problem } from "../problem/problem.js";
import { checkScene } from "./check-scene.js";
import { checkOfScene } from "./checker.js";

/** Checks how a picture is to be drawn, as a service does that reads it from a query. @param words for what is wrong */
export function checkLook(raw: unknown, words: ProblemTexts): { look: PictureLook } | { problem: Problem } {
  const check = checkOfScene(pictureLookSchema);
  const checked = checkScene<PictureLook>({ check, rules: [], concerns: {} }, raw, []);
  if ("scene" in checked) return { look: checked.scene };
  const { errors } = invalidRequest(checked.findings, words);
  return { problem: problem("invalid_query", words, words.queryDetails.no_such_look({}), errors) };
}

import type { CalculationName, Problem } from "@sunfathom/contract";
import { MODEL_VERSION } from "@sunfathom/planner";
import type { ProblemTexts } from "@sunfathom/words";
import { otherModel } from "../problem/other-model.js";
import { invalidRequest } from "../problem/problem.js";
import { checkOf } from "../validate/checker.js";
import { checkBatch } from "./check.js";
import type { BatchPlan } from "./plan.js";

/**
 * Makes a plan of a batch, or says in words why there is none.
 * @param fieldsOf names of the fields of a calculation's scenes
 */
export function planBatch(
  raw: unknown,
  words: ProblemTexts,
  fieldsOf: (operation: CalculationName) => readonly string[],
): { plan: BatchPlan } | { problem: Problem } {
  const checked = checkBatch(raw, checkOf("BatchRequest"), fieldsOf);
  if ("findings" in checked) return { problem: invalidRequest(checked.findings, words) };
  if ("expected" in checked) return { problem: otherModel({ ...checked, is: MODEL_VERSION }, words) };
  return checked;
}

import type { ComponentName, Problem } from "@sunfathom/contract";
import { MODEL_VERSION } from "@sunfathom/planner";
import type { ProblemTexts } from "@sunfathom/words";
import { otherModel } from "../problem/other-model.js";
import { invalidRequest } from "../problem/problem.js";
import { checkScene } from "./check-scene.js";
import { checkOf } from "./checker.js";

/**
 * Checks the body of a request that is no scene, and that it expects no other model.
 * @param component that it must keep: the schema of a `Wire`
 * @param words for what is wrong
 */
export function checkRequest<Wire extends object>(
  component: ComponentName,
  raw: unknown,
  words: ProblemTexts,
): { request: Wire } | { problem: Problem } {
  const checked = checkScene<Wire>({ check: checkOf(component), rules: [], concerns: {} }, raw, []);
  if ("findings" in checked) return { problem: invalidRequest(checked.findings, words) };
  const expected = expectedBy(checked.scene);
  return expected === undefined || expected === MODEL_VERSION
    ? { request: checked.scene }
    : { problem: otherModel({ expected, is: MODEL_VERSION }, words) };
}

/** Some requests take `expect_model_version`, which is text then. */
function expectedBy(request: object): string | undefined {
  return "expect_model_version" in request ? String(request.expect_model_version) : undefined;
}

import type { ComponentName, Problem } from "@sunfathom/contract";
import { MODEL_VERSION } from "@sunfathom/planner";
import type { ProblemTexts } from "@sunfathom/words";
import { otherModel } from "../problem/other-model.js";
import { invalidRequest } from "../problem/problem.js";
import { checkScene } from "./check-scene.js";
import { checkOf } from "./checker.js";
import { Findings } from "./findings.js";

/** A value, by its place, and what others leave for it. */
interface Beyond {
  pointer: string;
  value: number;
  minimum: number;
  maximum: number;
  unit?: string;
}

/**
 * Checks the body of a request that is no scene, and that it expects no other model.
 * @param component that it must keep: the schema of a `Wire`
 * @param words for what is wrong
 * @param beyond values that are too low or too high beside others
 */
export function checkRequest<Wire extends object>(
  component: ComponentName,
  raw: unknown,
  words: ProblemTexts,
  beyond: (request: Wire) => readonly Beyond[] = () => [],
): { request: Wire } | { problem: Problem } {
  const checked = checkScene<Wire>({ check: checkOf(component), rules: [], concerns: {} }, raw, []);
  if ("findings" in checked) return { problem: invalidRequest(checked.findings, words) };
  const findings = new Findings();
  for (const { pointer, ...range } of beyond(checked.scene))
    findings.add(() => ({ pointer, code: "out_of_range", parameters: { whole: false, ...range } }));
  if (!findings.none) return { problem: invalidRequest(findings, words) };
  const expected = expectedBy(checked.scene);
  return expected === undefined || expected === MODEL_VERSION
    ? { request: checked.scene }
    : { problem: otherModel({ expected, is: MODEL_VERSION }, words) };
}

/** Some requests take `expect_model_version`, which is text then. */
function expectedBy(request: object): string | undefined {
  return "expect_model_version" in request ? String(request.expect_model_version) : undefined;
}

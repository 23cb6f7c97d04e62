import {
  batchRequestSchema,
  type CalculationName,
  mountingInSceneNames,
  mountingSceneSchema,
  type Problem,
  plainSceneSchema,
} from "@sunfathom/contract";
import { MODEL_VERSION } from "@sunfathom/planner";
import type { ProblemTexts, SceneProblemTexts } from "@sunfathom/words";
import { otherModel } from "../problem/other-model.js";
import { invalidBatch } from "../problem/problem.js";
import { checkOfScene } from "../validate/checker.js";
import { type CheckedBatch, checkBatch } from "./check.js";

// For who computes without a service: the same without the schemas of all that a service takes and gives.

const namesOf = (name: CalculationName): readonly string[] =>
  name === "filter-mounting"
    ? Object.keys(mountingSceneSchema.properties ?? {})
    : [...Object.keys(plainSceneSchema.properties ?? {}), ...mountingInSceneNames];

/** Makes a plan of a batch, or says why there is none. */
export const checkBatchHere = (raw: unknown): CheckedBatch =>
  checkBatch(raw, checkOfScene(batchRequestSchema), namesOf);

/** Why there is no plan of a batch, in the words of one language. */
export const sayBatchRefusal = (
  checked: Exclude<CheckedBatch, { plan: unknown }>,
  words: SceneProblemTexts,
  own: { title: string; rules: ProblemTexts["batch"] },
): Problem =>
  "findings" in checked
    ? invalidBatch(checked.findings, words, own)
    : otherModel({ ...checked, is: MODEL_VERSION }, words);

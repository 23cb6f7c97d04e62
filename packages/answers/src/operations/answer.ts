import type { FieldError, Problem, Scene as WireScene } from "@sunfathom/contract";
import { MODEL_VERSION, SceneProblem } from "@sunfathom/planner";
import { outsideTheModel } from "../problem/outside-the-model.js";
import { invalidScene, problem } from "../problem/problem.js";
import { type CanonicalScene, canonicalScene } from "../scene/canonical.js";
import { shapeOf } from "../shape/shape.js";
import { checkScene } from "../validate/check-scene.js";
import type { Operation } from "./operation.js";
import { type OperationName, operationOf } from "./table.js";

export interface Refused {
  status: "problem";
  problem: Problem;
}

export interface Answered {
  status: "ok";
  /** The answer in its final form: `toJson` gives its bytes. */
  body: object;
  /** The scene in its one form, as text: equal for scenes that mean the same. */
  canonical: string;
}

/** A scene that is valid, before anything was computed. */
export interface Ready {
  status: "ready";
  canonical: string;
  compute: () => Answered | Refused;
}

/**
 * Answers a scene.
 * @param name of the calculation
 * @param raw the scene as it came from outside; nothing is assumed of it
 * @returns the answer, or a problem that says all that is wrong
 * @throws only where the program itself is wrong
 */
export function answer(name: OperationName, raw: unknown): Answered | Refused {
  const prepared = prepare(operationOf(name), raw);
  return prepared.status === "ready" ? prepared.compute() : prepared;
}

/**
 * Checks a scene and brings it into its one form, and leaves the computing for later: whoever already has the answer
 * to `canonical` need not ask for it.
 * @param found errors that reading the request has already met
 */
export function prepare(
  operation: Operation,
  raw: unknown,
  found: readonly FieldError[] = [],
): Ready | Refused {
  const checked = checkScene(raw, found);
  if ("findings" in checked) return { status: "problem", problem: invalidScene(checked.findings) };
  const expected = checked.scene.expect_model_version;
  if (expected !== undefined && expected !== MODEL_VERSION) {
    const detail = `The request expects version ${expected} of the model; this one is ${MODEL_VERSION}.`;
    return { status: "problem", problem: problem("model_version_mismatch", detail) };
  }
  const { scene, assumed } = canonicalScene(checked.scene);
  const canonical = JSON.stringify({ ...scene, assumed });
  return {
    status: "ready",
    canonical,
    compute: () => compute(operation, checked.scene, { scene, assumed }, canonical),
  };
}

function compute(
  operation: Operation,
  asked: WireScene,
  { scene, assumed }: CanonicalScene,
  canonical: string,
): Answered | Refused {
  try {
    const { sources, ...result } = operation.plan(scene);
    const whole = { scene: { ...scene, assumed }, ...result, model: { version: MODEL_VERSION, sources } };
    return { status: "ok", body: shapeOf(operation.answer)(whole) as object, canonical };
  } catch (error) {
    if (error instanceof SceneProblem) return { status: "problem", problem: outsideTheModel(error, asked) };
    throw error;
  }
}

import type { AnswerForm, FieldError } from "@sunfathom/contract";
import { MODEL_VERSION, SceneProblem } from "@sunfathom/planner";
import { otherModel } from "../problem/other-model.js";
import { outsideTheModel } from "../problem/outside-the-model.js";
import { invalidScene } from "../problem/problem.js";
import { joined } from "../scene/fields.js";
import type { SceneKind } from "../scene/scene-kind.js";
import { checkScene } from "../validate/check-scene.js";
import { checkOfScene } from "../validate/checker.js";
import type { Answered, Ready, Refused, Said } from "./outcome.js";
import { WorkedOut } from "./worked-out.js";

/** What every kind of scene can ask for. */
interface Asked {
  expect_model_version?: string | undefined;
}

/** What works out an answer, and the form in which it leaves. */
interface Work<Own> {
  form: AnswerForm;
  plan: (scene: Own) => Said;
}

/**
 * Checks a scene and brings it into its one form, and leaves the computing for later: whoever already has the answer
 * to `canonical` need not ask for it.
 * @param found errors that reading the request has already met
 */
export function prepare<Wire extends Asked, Own extends object>(
  kind: SceneKind<Wire, Own>,
  work: Work<Own>,
  raw: unknown,
  found: readonly FieldError[],
): Ready | Refused {
  const checked = checkScene({ check: checkOfScene(kind.schema), rules: kind.rules }, raw, found);
  if ("findings" in checked)
    return { status: "problem", problem: invalidScene(checked.findings, kind.ruleTexts) };
  const mismatch = otherModel(checked.scene.expect_model_version);
  if (mismatch !== undefined) return { status: "problem", problem: mismatch };
  const { scene, assumed } = kind.canonical(checked.scene);
  const told = joined(scene, { assumed });
  const text = JSON.stringify(told);
  const refuse = (error: SceneProblem): Refused => ({
    status: "problem",
    problem: outsideTheModel(error, kind.outside, (field) => kind.asAsked(field, checked.scene)),
  });
  return {
    status: "ready",
    canonical: text,
    scene,
    compute: () => compute(work, { scene, told, text }, refuse),
  };
}

/** A scene in its one form, with what was assumed as answers tell it, and that as text. */
interface Read<Own> {
  scene: Own;
  told: object;
  text: string;
}

function compute<Own extends object>(
  { form, plan }: Work<Own>,
  { scene, told, text }: Read<Own>,
  refuse: (error: SceneProblem) => Refused,
): Answered | Refused {
  try {
    const { sources, ...result } = plan(scene);
    const whole = { scene: told, ...result, model: { version: MODEL_VERSION, sources } };
    return new WorkedOut(form, whole, text);
  } catch (error) {
    if (error instanceof SceneProblem) return refuse(error);
    throw error;
  }
}

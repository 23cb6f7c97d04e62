import type { AnswerForm, FieldError, TextUnits } from "@sunfathom/contract";
import { MODEL_VERSION, type SceneProblem } from "@sunfathom/planner";
import type { Refusal } from "../problem/refusal.js";
import { joined } from "../scene/fields.js";
import type { SceneKind } from "../scene/scene-kind.js";
import { accepts } from "../validate/accepts.js";
import { linksOf, type ShownBy } from "./links.js";
import type { Answered, Ready, Said } from "./outcome.js";
import { WorkedOut } from "./worked-out.js";

/** What every kind of scene can ask for. */
interface Asked {
  expect_model_version?: string | undefined;
  units?: TextUnits | undefined;
}

/** What works out an answer, the form in which it leaves, and what becomes of a refusal. */
interface Work<Own, Refused> {
  form: AnswerForm;
  plan: (scene: Own, units: TextUnits) => Said;
  refuse: (refusal: Refusal) => Refused;
  shownBy: readonly ShownBy[];
}

/**
 * Checks a scene and brings it into its one form, and leaves the computing for later: whoever already has the answer
 * to `canonical` need not ask for it.
 * @param found errors that reading the request has already met
 */
export function prepare<Wire extends Asked, Own extends object, Refused>(
  kind: SceneKind<Wire, Own>,
  work: Work<Own, Refused>,
  raw: unknown,
  found: readonly FieldError[],
): Ready<Refused> | Refused {
  const { refuse } = work;
  if (found.length > 0 || !accepts(kind.schema)(raw))
    return refuse({ code: "invalid_scene", kind, raw, found });
  const wire = raw as Wire;
  if (kind.rules.some(({ violations }) => violations(wire).length > 0))
    return refuse({ code: "invalid_scene", kind, raw, found });
  const { expect_model_version: expected, units = "metric" } = wire;
  if (expected !== undefined && expected !== MODEL_VERSION)
    return refuse({ code: "model_version_mismatch", expected, is: MODEL_VERSION });
  const { scene, assumed } = kind.canonical(wire);
  const told = joined(scene, { assumed });
  const text = JSON.stringify(told);
  const outside = (refused: unknown): Refused => {
    if (!isSceneProblem(refused)) throw refused;
    const field = kind.asAsked(refused.field, wire);
    return refuse({ code: "outside_the_model", kind, refused, field });
  };
  return {
    status: "ready",
    canonical: text,
    units,
    scene,
    compute: () => compute(work, { scene, assumed, told, text, units }, outside),
    refuse: outside,
  };
}

/** By its name: what a page loads on demand has its own copy of the class. */
const isSceneProblem = (error: unknown): error is SceneProblem =>
  error instanceof Error && error.name === "SceneProblem";

/** A scene in its one form, with what was assumed as answers tell it, and that as text. */
interface Read<Own> {
  scene: Own;
  assumed: readonly string[];
  told: object;
  text: string;
  units: TextUnits;
}

function compute<Own extends object, Refused>(
  { form, plan, shownBy }: Work<Own, Refused>,
  { scene, assumed, told, text, units }: Read<Own>,
  outside: (error: unknown) => Refused,
): Answered | Refused {
  try {
    const { sources, ...result } = plan(scene, units);
    const model = { version: MODEL_VERSION, sources };
    const links = linksOf(shownBy, scene, assumed);
    const whole = { scene: told, ...result, model, links };
    return new WorkedOut(form, whole, text);
  } catch (error) {
    return outside(error);
  }
}

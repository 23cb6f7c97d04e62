import type { Problem } from "@sunfathom/contract";
import type { SceneProblem, SceneRefusal, SceneRefusals } from "@sunfathom/planner";
import type { OutsideText, SceneProblemTexts, Texts } from "@sunfathom/words";
import { member } from "../validate/pointer.js";
import { sceneProblem } from "./problem.js";
import { readable } from "./readable.js";

/** Texts for what the model can refuse of scenes of one kind. */
export type OutsideTexts = Partial<Texts<SceneRefusals, OutsideText>>;

/**
 * The problem of a scene that is valid, but that the model cannot answer.
 * @param texts for what can be refused of such a scene
 * @param field the name under which the caller gave the field that it concerns
 * @throws the refusal itself where there is no text for it: then the program is wrong
 */
export function outsideTheModel(
  refused: SceneProblem,
  { titles, texts }: Pick<SceneProblemTexts, "titles"> & { texts: OutsideTexts },
  field: string,
): Problem {
  const text = textOf(refused.refusal, texts);
  if (text === undefined) throw refused;
  const { detail, message, allowed } = text;
  const { code, parameters } = refused.refusal;
  const pointer = [field, ...refused.within].reduce(member, "");
  const error = { pointer, code, message, allowed, parameters };
  return sceneProblem("outside_the_model", { titles }, detail, [error]);
}

function textOf<Code extends keyof SceneRefusals>(
  { code, parameters }: SceneRefusal & { code: Code; parameters: SceneRefusals[Code] },
  texts: OutsideTexts,
): OutsideText | undefined {
  const say: ((parameters: SceneRefusals[Code]) => OutsideText) | undefined = texts[code];
  return say && { ...say(readable(parameters)), allowed: say(parameters).allowed };
}

import type { Form } from "./json-schema/form.js";
import {
  type CalculationName,
  calculationNames,
  type Pascal,
  pascal,
  type ReferenceName,
  referenceNames,
} from "./operation-names.js";

/** Components that come in and go out where answers are computed, be it in a service or without one. */
export const sceneNames = ["Scene", "MountingScene"] as const;
export type SceneName = (typeof sceneNames)[number];

/** Components that scenes and their parts are brought into: their fields in order are the one form of a scene. */
export const resolvedNames = ["ResolvedScene", "ResolvedLamp", "ResolvedMountingScene"] as const;

export type AnswerName = `${Pascal<CalculationName | ReferenceName>}Answer`;
export const answerNames: readonly AnswerName[] = [...calculationNames, ...referenceNames]
  .map((name): AnswerName => `${pascal(name)}Answer`)
  .sort();

/** The form in which an answer leaves. */
export interface AnswerForm {
  readonly component: AnswerName;
  readonly form: Form;
}

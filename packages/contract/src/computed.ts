import type { Form } from "./json-schema/form.js";
import type { JsonSchema } from "./json-schema/schema.js";
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

export type AnswerName = `${Pascal<CalculationName | ReferenceName>}Answer`;
export const answerNames: readonly AnswerName[] = [...calculationNames, ...referenceNames]
  .map((name): AnswerName => `${pascal(name)}Answer`)
  .sort();

/** What it takes to check a scene. */
export interface SceneSchemas {
  readonly component: SceneName;
  /** Its schema and those that it refers to, by name. */
  readonly schemas: Readonly<Record<string, JsonSchema>>;
}

/** The form in which an answer leaves. */
export interface AnswerForm {
  readonly component: AnswerName;
  readonly form: Form;
}

import { type AnswerForm, type AnswerName, pathOf } from "@sunfathom/contract";
import { MODEL_VERSION } from "@sunfathom/planner";
import { shapeOfAnswer } from "../shape/shape.js";

/** Reference data: the same for every caller until the model changes. */
export interface ReferenceData {
  /** Name, and last part of its path. */
  name: string;
  path: string;
  /** Component of the contract that it keeps. */
  answer: AnswerName;
  /** The data, in their final form. */
  reply: () => { status: "ok"; body: object };
}

/** What reference data say of themselves where a service describes them. */
export interface AboutData {
  summary: string;
  description: string;
}

/** Makes reference data of what reads them. */
export function reading<const Name extends string>({
  name,
  form,
  read,
}: {
  name: Name;
  form: AnswerForm;
  read: () => object;
}): ReferenceData & { name: Name } {
  const shaped = () => shapeOfAnswer(form)({ ...read(), model_version: MODEL_VERSION }) as object;
  return {
    name,
    path: pathOf(name),
    answer: form.component,
    reply: () => ({ status: "ok", body: shaped() }),
  };
}

/** The planner names types and kinds with plain strings. */
export type Narrowed<T> = { [K in keyof T]: T[K] extends string ? string : T[K] };

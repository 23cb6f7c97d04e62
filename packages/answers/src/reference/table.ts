import type { AnswerName, FilterKindInfo, ModelInfo, WaterTypeInfo } from "@sunfathom/contract";
import { filterKinds, MODEL_VERSION, models, waterTypes } from "@sunfathom/planner";
import { shapeOfAnswer } from "../shape/shape.js";

/** Reference data: the same for every caller until the model changes. */
export interface Reference {
  name: string;
  path: string;
  id: string;
  summary: string;
  description: string;
  answer: AnswerName;
  read: () => object;
}

export const references: readonly Reference[] = [
  {
    name: "water-types",
    path: "/v1/water-types",
    id: "listWaterTypes",
    summary: "The optical water types",
    description: "Every water type that a scene can name, with its attenuation and where it comes from.",
    answer: "WaterTypesAnswer",
    read: () => ({ water_types: waterTypes() satisfies Narrowed<WaterTypeInfo>[] }),
  },
  {
    name: "filter-kinds",
    path: "/v1/filter-kinds",
    id: "listFilterKinds",
    summary: "The kinds of filter",
    description: "Every kind of filter that a scene can name, with its spectral shape.",
    answer: "FilterKindsAnswer",
    read: () => ({ filter_kinds: filterKinds() satisfies Narrowed<FilterKindInfo>[] }),
  },
  {
    name: "models",
    path: "/v1/models",
    id: "listModels",
    summary: "What the model is made of",
    description:
      "Every table, formula and assumption behind the answers, with its source, domain and weaknesses.",
    answer: "ModelsAnswer",
    read: () => ({ models: models() satisfies ModelInfo[] }),
  },
];

/** The planner names types and kinds with plain strings. */
type Narrowed<T> = { [K in keyof T]: T[K] extends string ? string : T[K] };

/** The body of a reference answer, in its final form. */
export function readReference({ answer, read }: Reference): object {
  return shapeOfAnswer(answer)({ ...read(), model_version: MODEL_VERSION }) as object;
}

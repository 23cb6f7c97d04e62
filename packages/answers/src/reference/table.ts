import { filterKinds } from "./data/filter-kinds.js";
import { models } from "./data/models.js";
import { waterTypes } from "./data/water-types.js";
import type { ReferenceData } from "./reading.js";

/** What reference data are called where they are described. */
interface Described {
  id: string;
  summary: string;
  description: string;
}

/** Reference data as a service offers them. */
export type Reference = ReferenceData & Described;

const data = [waterTypes, filterKinds, models] as const;

// Apart from the data: whoever computes without a service describes nothing.
const described: Readonly<Record<(typeof data)[number]["name"], Described>> = {
  "water-types": {
    id: "listWaterTypes",
    summary: "The optical water types",
    description: "Every water type that a scene can name, with its attenuation and where it comes from.",
  },
  "filter-kinds": {
    id: "listFilterKinds",
    summary: "The kinds of filter",
    description: "Every kind of filter that a scene can name, with its spectral shape.",
  },
  models: {
    id: "listModels",
    summary: "What the model is made of",
    description:
      "Every table, formula and assumption behind the answers, with its source, domain and weaknesses.",
  },
};

export const references: readonly Reference[] = data.map((entry) => ({ ...entry, ...described[entry.name] }));

/** The body of a reference answer, in its final form. */
export function readReference({ reply }: ReferenceData): object {
  return reply().body;
}

import { pascal } from "@sunfathom/contract";
import { aboutData, referenceData } from "../generated/reference.js";
import type { AboutData, ReferenceData } from "./reading.js";

/** Reference data as a service offers them. */
export interface Reference extends ReferenceData, AboutData {
  /** Its `operationId`. */
  id: string;
}

/** Apart from the data: whoever computes without a service describes nothing. */
export const references: readonly Reference[] = referenceData.map((data) => ({
  ...data,
  ...aboutData[data.name],
  id: `list${pascal(data.name)}`,
}));

/** The body of a reference answer, in its final form. */
export function readReference({ reply }: ReferenceData): object {
  return reply().body;
}

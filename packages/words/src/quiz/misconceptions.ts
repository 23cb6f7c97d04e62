import { misconceptionsOfLight } from "./misconceptions-of-light.js";
import { misconceptionsOfWork } from "./misconceptions-of-work.js";

/**
 * Misunderstandings that wrong answers come from: what each gets wrong. The template that uses one computes what it would
 * answer; the feedback stands in the texts of each language under the same id. That people hold them is teachers' experience:
 * common practice, no published source.
 */
export const misconceptions = [...misconceptionsOfLight, ...misconceptionsOfWork] as const;

export type MisconceptionOfLight = (typeof misconceptionsOfLight)[number];
export type MisconceptionOfWork = (typeof misconceptionsOfWork)[number];
export type MisconceptionId = (typeof misconceptions)[number];

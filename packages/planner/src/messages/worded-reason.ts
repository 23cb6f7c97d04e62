import type { Basis } from "../codes/coded.js";

/** A reason with its text. */
export interface WordedReason {
  code: string;
  text: string;
  basis: Basis;
  parameters: object;
}

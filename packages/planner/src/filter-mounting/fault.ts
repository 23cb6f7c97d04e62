import type { MountVerdict } from "../result/filter-mounting.js";
import type { Reason } from "./reason.js";

/** What speaks against a holder; a fatal fault rules it out, another asks for care. */
export interface Fault {
  fatal: boolean;
  reason: Reason;
}

export const fatal = (why: Reason): Fault => ({ fatal: true, reason: why });
export const care = (why: Reason): Fault => ({ fatal: false, reason: why });

/** Verdicts from best to worst. */
export const VERDICTS: readonly MountVerdict[] = ["fits", "fits_with_care", "does_not_fit"];

/** The verdict that faults come to, and their reasons with the fatal ones first. */
export function weighed(faults: readonly Fault[]): { verdict: MountVerdict; faults: Reason[] } {
  const ruledOut = faults.filter((fault) => fault.fatal);
  const others = faults.filter((fault) => !fault.fatal);
  const verdict = ruledOut.length > 0 ? "does_not_fit" : others.length > 0 ? "fits_with_care" : "fits";
  return { verdict, faults: [...ruledOut, ...others].map((fault) => fault.reason) };
}

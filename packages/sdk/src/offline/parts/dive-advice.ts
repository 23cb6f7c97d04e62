import { diveAdvice as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * The whole job for one dive: nearly all of the others are in it: `calculations.diveAdvice`.
 * @example const client = offlineWith([diveAdvice]);
 */
export const diveAdvice: OfflinePart<"diveAdvice"> = {
  name: "diveAdvice",
  group: "calculations",
  source,
};

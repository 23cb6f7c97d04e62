import { colourRecovery as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * What grading can still bring back: `calculations.colourRecovery`.
 * @example const client = offlineWith([colourRecovery]);
 */
export const colourRecovery: OfflinePart<"colourRecovery"> = {
  name: "colourRecovery",
  group: "calculations",
  source,
};

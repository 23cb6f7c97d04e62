import { whiteBalance as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * How to balance white, and where again: `calculations.whiteBalance`.
 * @example const client = offlineWith([whiteBalance]);
 */
export const whiteBalance: OfflinePart<"whiteBalance"> = {
  name: "whiteBalance",
  group: "calculations",
  source,
};

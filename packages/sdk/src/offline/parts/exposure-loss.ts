import { exposureLoss as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * Where light is lost, and what pays for it: `calculations.exposureLoss`.
 * @example const client = offlineWith([exposureLoss]);
 */
export const exposureLoss: OfflinePart<"exposureLoss"> = {
  name: "exposureLoss",
  group: "calculations",
  source,
};

import { filterChoice as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * Which filter to mount on the lens: `calculations.filterChoice`.
 * @example const client = offlineWith([filterChoice]);
 */
export const filterChoice: OfflinePart<"filterChoice"> = {
  name: "filterChoice",
  group: "calculations",
  source,
};

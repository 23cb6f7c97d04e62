import { filterMounting as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * Where the filter goes on this lens and port: `calculations.filterMounting`.
 * @example const client = offlineWith([filterMounting]);
 */
export const filterMounting: OfflinePart<"filterMounting"> = {
  name: "filterMounting",
  group: "calculations",
  source,
};

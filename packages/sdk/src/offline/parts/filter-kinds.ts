import { filterKinds as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * The kinds of filter: `reference.filterKinds`.
 * @example const client = offlineWith([filterKinds]);
 */
export const filterKinds: OfflinePart<"filterKinds"> = {
  name: "filterKinds",
  group: "reference",
  source,
};

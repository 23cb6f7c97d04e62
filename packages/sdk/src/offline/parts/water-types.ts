import { waterTypes as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * The optical water types: `reference.waterTypes`.
 * @example const client = offlineWith([waterTypes]);
 */
export const waterTypes: OfflinePart<"waterTypes"> = {
  name: "waterTypes",
  group: "reference",
  source,
};

import { mixedLight as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * Lamps against daylight: `calculations.mixedLight`.
 * @example const client = offlineWith([mixedLight]);
 */
export const mixedLight: OfflinePart<"mixedLight"> = {
  name: "mixedLight",
  group: "calculations",
  source,
};

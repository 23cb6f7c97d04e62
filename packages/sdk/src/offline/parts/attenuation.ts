import { attenuation as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * How the water takes the light: `calculations.attenuation`.
 * @example const client = offlineWith([attenuation]);
 */
export const attenuation: OfflinePart<"attenuation"> = {
  name: "attenuation",
  group: "calculations",
  source,
};

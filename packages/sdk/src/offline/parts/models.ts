import { models as source } from "@sunfathom/answers";
import type { OfflinePart } from "../part.js";

/**
 * What the model is made of: `reference.models`.
 * @example const client = offlineWith([models]);
 */
export const models: OfflinePart<"models"> = { name: "models", group: "reference", source };

export type { ApiOf } from "../core/api-of.js";
export * from "./generated/parts.js";
export { modelVersion } from "./model-version.js";
export { offlineWith } from "./offline-with.js";
export type { OfflineOptions } from "./options.js";
export type { OfflineName, OfflinePart } from "./part.js";
export { ready } from "./ready.js";

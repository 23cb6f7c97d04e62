import type { Language } from "../generated/types.js";

/** What holds for every call of an offline client. */
export interface OfflineOptions {
  /** Take answers of this version of the model and no other; the one that is here is `modelVersion`. */
  expectModelVersion?: string | undefined;
  /** Language of the texts, where a scene does not name its own. Default `en`; others are loaded when a client is made. */
  language?: Language | undefined;
}

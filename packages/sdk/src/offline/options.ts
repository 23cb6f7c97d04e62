/** What holds for every call of an offline client. */
export interface OfflineOptions {
  /** Take answers of this version of the model and no other; the one that is here is `modelVersion`. */
  expectModelVersion?: string | undefined;
}

/**
 * A question outside what the model can answer. `code` is stable and meant for programs; the message says what was asked,
 * what is possible and, where it helps, what to do instead.
 */
export class OpticsDomainError extends RangeError {
  override readonly name = "OpticsDomainError";

  constructor(
    readonly code: OpticsErrorCode,
    message: string,
  ) {
    super(message);
  }
}

/** Every reason for which optics refuses to answer. */
export type OpticsErrorCode =
  | "latitude_out_of_range"
  | "longitude_out_of_range"
  | "instant_out_of_range"
  | "local_time_malformed"
  | "local_time_skipped"
  | "time_zone_unknown"
  | "chlorophyll_out_of_range"
  | "secchi_depth_out_of_range"
  | "visibility_out_of_range"
  | "water_hue_contradicts_measure"
  | "card_samples_too_few"
  | "card_samples_malformed"
  | "card_samples_contradict"
  | "card_samples_outside_family";

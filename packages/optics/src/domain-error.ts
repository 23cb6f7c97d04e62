/** Every reason for which optics refuses to answer, with what was asked and what is possible. */
export interface OpticsRefusals {
  latitude_out_of_range: { latitude_deg: number; limit_deg: number };
  longitude_out_of_range: { longitude_deg: number; limit_deg: number };
  /** Without `year` where it is no date at all. */
  instant_out_of_range: { year?: number; first_year: number; last_year: number };
  local_time_malformed: { local_time: string; first_year: number; last_year: number };
  /** The zone's clocks were put forward over it. */
  local_time_skipped: { local_time: string; time_zone: string };
  time_zone_unknown: { time_zone: string };
  chlorophyll_out_of_range: { chlorophyll_mg_m3: number; min_mg_m3: number; max_mg_m3: number };
  secchi_depth_out_of_range: { value_m: number; min_m: number; max_m: number };
  visibility_out_of_range: { value_m: number; min_m: number; max_m: number };
  /** `min_m` and `max_m` are what water of that hue shows; `fitting_hues` show such a distance. */
  water_hue_contradicts_measure: {
    measure: "secchi_depth_m" | "visibility_m";
    value_m: number;
    water_hue: string;
    min_m: number;
    max_m: number;
    fitting_hues: readonly string[];
  };
  card_samples_too_few: { span_m: number; least_span_m: number };
  card_samples_malformed: MalformedCard;
  /** `rms_ln` is how far they miss the best water, in the logarithm; worst at `worst_depth_m`. */
  card_samples_contradict: { rms_ln: number; worst_depth_m: number };
  card_samples_outside_family: { case: "clearer" | "murkier" };
}

/** What keeps a picture of a card from being read. */
export type MalformedCard =
  | { case: "not_with_all"; field: "exposure" | "balance_gains"; given: number; samples: number }
  | { case: "depth"; depth_m: number; max_depth_m: number }
  | { case: "clipped" | "dark"; depth_m: number; value: number }
  | { case: "exposure_not_positive" | "gains_not_positive"; depth_m: number }
  | { case: "balance_unlocked" };

export type OpticsErrorCode = keyof OpticsRefusals;

/** A code with its parameters. */
export type OpticsRefusal = {
  [Code in OpticsErrorCode]: { code: Code; parameters: OpticsRefusals[Code] };
}[OpticsErrorCode];

/** A question outside what the model can answer. Codes are stable; a sentence is made of them elsewhere. */
export class OpticsDomainError extends RangeError {
  override readonly name = "OpticsDomainError";

  constructor(readonly refusal: OpticsRefusal) {
    super(`${refusal.code} ${JSON.stringify(refusal.parameters)}`);
  }

  get code(): OpticsErrorCode {
    return this.refusal.code;
  }
}

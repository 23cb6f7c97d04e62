/** What a violation of each rule between fields comes with: all that its text is made of. */
export interface SceneRuleParameters {
  /** In how many ways the water is described. */
  one_water_basis: { given: number };
  water_companions:
    | { case: "missing"; field: string; missing: string }
    | { case: "stray"; field: string; goes_with: readonly string[] };
  kd_samples_rising: NotRising;
  card_exposure_whole: NotWhole;
  card_gains_whole: NotWhole;
  sun_with_basis_sun: { daylight_basis: string };
  place_with_basis_place_time: { field: string; daylight_basis: string };
  place_and_time_whole: { case: "missing"; field: string } | { case: "twice" | "half" | "not_given" };
  day_exists: Nothing;
  one_depth: { case: "twice" | "not_given" } | { case: "missing"; field: string };
  depths_in_order: { min_depth_m: number; max_depth_m: number };
  one_sun_side: Nothing;
  heading_with_place_time: { daylight_basis: string };
  one_bottom: Nothing;
  bottom_with_depth: Nothing;
  bottom_below_camera: { bottom_depth_m: number; deepest_m: number };
  bottom_reflectance_rising: NotRising;
  iso_limits_in_order: LimitsOutOfOrder;
  iso_within_limits: OutsideLimits;
  f_number_limits_in_order: LimitsOutOfOrder;
  f_number_within_limits: OutsideLimits;
  white_balance_cct_K_limits_in_order: LimitsOutOfOrder;
  one_shutter: Nothing;
  shutter_within_frame: { frame_rate_fps: number; frame_s: number };
  shutter_not_too_short: { shutter_s: number; shortest_s: number };
  one_lens_filter: Nothing;
  lens_filter_pair: HalfFilter;
  filter_transmittance_rising: NotRising;
  kit_ids_unique: RepeatedId;
  kit_filters: { case: "lamp" | "twice" | "not_described" } | ({ case: "half" } & HalfFilter);
  kit_curves_rising: NotRising;
  lamp_colour: { fields: readonly string[] };
  lamp_filter_pair: HalfFilter;
  lamps_once: Nothing;
  lamp_complete: { missing: string };
}

/** The same for a mounting scene. */
export interface MountingRuleParameters {
  lens_field_given: { case: "not_given" | "half" };
  dome_radius_with_dome: { port_kind: string };
  rear_opening_whole: { missing: string };
  ring_ids_unique: RepeatedId;
}

export interface RuleParameters extends SceneRuleParameters, MountingRuleParameters {}

export type RuleCode = keyof RuleParameters;

type Nothing = Record<never, never>;

/** A sample of a curve that does not come after the one before it. */
export interface NotRising {
  wavelength_nm: number;
  before_nm: number;
}

/** Fields that mean something only all together. */
interface NotWhole {
  missing: readonly string[];
  all: readonly string[];
}

/** A limit that holds, as stated or by default. */
export interface Limit {
  field: string;
  value: number;
  stated: boolean;
}

interface LimitsOutOfOrder {
  low: Limit;
  high: Limit;
}

interface OutsideLimits extends LimitsOutOfOrder {
  value: number;
}

/** A kind without a density, or the other way round. */
export interface HalfFilter {
  missing: string;
  fields: readonly string[];
}

/** An id that an earlier thing of the same list has already: where that stands, as a JSON pointer. */
export interface RepeatedId {
  first: string;
}

import type { BalanceMode, ExposureMode, FilterChange } from "../scene/scene.js";
import type { Coded, Nothing } from "./coded.js";
import type { NamedFilter } from "./named-filter.js";
import type { WaysOut } from "./ways-out.js";
import type { WaysToPay } from "./ways-to-pay.js";

/** What is rinsed and dried. */
export type Gear = "housing" | "filter" | "lamps";

/** How a filter is changed under water. */
export type Mount = Exclude<FilterChange, "none">;

/** How the camera is set; the exposure time is that of the plan where it is absent. */
export interface Setting {
  iso: number;
  f_number: number;
  shutter?: { shutter_s: number };
  /** Neutral density on the lens. */
  behind?: { density: number };
}

/** A filter for the lens, and what it is worth. */
export interface LensFilterStep {
  filter: NamedFilter;
  with_e: number;
  without_e: number;
  loss_stops: number;
  /** What the caller has mounted, and is to take off. */
  instead_of?: NamedFilter;
  /** Known to be mounted in the water, before the closed housing. */
  outside?: true;
}

/** What the lamps are to give on the subject. */
export interface LampCheck {
  lux: number;
  distance_m: number;
}

/** What is done with the lamps; numbers are the figures of the answer. */
export interface LampStepCodes {
  check_lamps: LampCheck;
  filter_lamps: { filter: NamedFilter; left: number; instead_of?: NamedFilter; check?: LampCheck };
  keep_lamp_filters: { filter: NamedFilter; left: number; check?: LampCheck };
  bare_lamps: { filter: NamedFilter; check?: LampCheck };
  lamps_off: {
    split: number;
    red_excess: number;
    cost: number;
    /** Filter that the lamps carry already. */
    fitted?: NamedFilter;
    other?: { way: Coded<WaysOut>; left: number };
  };
  lamps_from: { depth_m: number };
  /** Where haze that the lamps light spoils the picture, how bright it is against a grey subject. */
  lamps_lead: { green: number; haze?: { percent: number } };
  lamps_hardly_show: { green: number; haze?: { percent: number } };
  lamps_only: { red: number; green: number; blue: number; haze?: { percent: number } };
  mixing_zone: { from_m: number; to_m: number };
}

/** Steps of a plan: what to do, and why. */
export interface StepCodes extends LampStepCodes {
  mount_filter: LensFilterStep;
  /** The caller's stays on, though another might be a little better. */
  keep_filter: Omit<LensFilterStep, "instead_of"> & { better?: NamedFilter };
  /** @property from_start it is on the lens where filming begins */
  carry_filter: LensFilterStep & { mount: Mount; from_m: number; to_m: number; from_start: boolean };
  no_filter: { error: number; instead_of?: NamedFilter };
  no_filter_for_lamps: { instead_of?: NamedFilter };
  neutral_density: { density: number; stops: number; mount: FilterChange };
  set_frame: { exposure: { shutter_s: number }; bits: number };
  start_exposure: Setting & { ev: number };
  /** `near_m` where the subject is out of reach: so far from the camera, in its place. */
  balance_on_card: { cast: number; near_m?: number };
  set_modes: {
    exposure_mode: ExposureMode;
    white_balance_mode: BalanceMode;
    exposure: { shutter_s: number };
  };
  /** With what to compensate the camera's own exposure by, for the subject, in stops. */
  exposure_by_itself: { stops: number };
  balance_by_itself: { cast: number };
  balance_in_kelvin: { cct_K: number; cast: number };
  balance_on_card_in_lamp_light: { cct_K?: number; cast: number };
  /** With the tolerance that was asked for where balances would have come too close. */
  balance_again: { depths_m: readonly number[]; tolerance: number; asked?: { tolerance: number } };
  filter_in: Setting & { depth_m: number; mount: Mount };
  filter_out: Setting & { depth_m: number; mount: Mount };
  neutral_off: Setting & { depth_m: number; mount: Mount };
  neutral_on: Setting & { depth_m: number; mount: Mount };
  deep_exposure: Setting & { stops: number };
  shallow_exposure: Setting & { stops: number };
  too_dark: { iso: number; f_number: number; shortfall_stops: number; ways: readonly Coded<WaysToPay>[] };
  come_close: { percent: number; distance_m: number };
  /** `gone_m` where the dive goes that deep. */
  grade_red: { acceptable_m: number; gone_m?: number };
  grade_no_red: { gone_m?: number };
  lamps_off_before_air: Nothing;
  rinse: { gear: readonly Gear[] };
}

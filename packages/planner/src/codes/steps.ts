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
  /** It is the densest that was tried, and weaker ones do worse. */
  densest?: true;
  /** What the caller has mounted, and is to take off. */
  instead_of?: NamedFilter;
  /** Mounted before the closed housing, on land or in the water. */
  outside?: true;
  /** The errors are of what video lights light. */
  lit?: true;
  /** Where it ranks worse at the deep end than over the range: down to where it does not, and what is left below. */
  below?: { from_m: number; error: number };
}

/**
 * Down to where a white balance is kept, and why no other follows: it would gain little; the camera comes to its limit, and it would
 * take out a part of the cast (`limit`), or nothing to be seen (`at_limit`).
 */
export interface Holds {
  to_m: number;
  because?: "limit" | "at_limit" | "little";
}

/** What the lamps are to give on the subject. */
export interface LampCheck {
  lux: number;
  distance_m: number;
}

/** What is done with the lamps; numbers are the figures of the answer. */
export interface LampStepCodes {
  filter_lamps: { filter: NamedFilter; left: number; instead_of?: NamedFilter };
  keep_lamp_filters: { filter: NamedFilter; left: number };
  bare_lamps: { filter: NamedFilter };
  lamps_off: {
    split: number;
    red_excess: number;
    cost: number;
    /** Filter that the lamps carry already. */
    fitted?: NamedFilter;
    other?: { way: Coded<WaysOut>; left: number };
  };
  lamps_from: { depth_m: number };
  /** Before the camera is set. `wide` where no other step says how to keep their light off the particles. */
  lamps_on: { distance_m: number; wide?: true };
  /** Errors of the whole picture with both lights, and with the lamps off; the cast of what the lamps do not reach. */
  lamps_with_daylight: {
    with_e: number;
    without_e: number;
    unlit: number;
    /** A filter for the lamps that is owned, and stays off them. */
    unused?: NamedFilter;
    haze?: { percent: number };
  };
  /** Errors of what the lamps reach and of what they do not, with no filter on the lens and the balance set in their light. */
  lamps_for_subject: { error: number; around: number };
  /** Where haze that the lamps light spoils the picture, how bright it is against a grey subject. */
  lamps_lead: { green: number; haze?: { percent: number } };
  /** `fight` where they are neither outshone nor lead. */
  lamps_hardly_show: { green: number; haze?: { percent: number }; fight?: { from_m: number; to_m: number } };
  lamps_only: { red: number; green: number; blue: number; haze?: { percent: number } };
  /**
   * From how far off on, as seen from the camera, the picture is black, or in daylight alone and so much darker than the subject.
   */
  lamps_reach: { dark_m: number; daylight?: { stops: number } };
  mixing_zone: { from_m: number; to_m: number };
}

/** What goes on the lens and comes off it under water. */
export interface ChangeStepCodes {
  /** @property from_start it is on the lens where filming begins */
  carry_filter: LensFilterStep & { mount: Mount; from_m: number; to_m: number; from_start: boolean };
  /** @property stays it is on the lens for the whole dive */
  neutral_density: { density: number; stops: number; mount: FilterChange; stays: boolean };
  filter_in: Setting & { depth_m: number; mount: Mount };
  filter_out: Setting & { depth_m: number; mount: Mount };
  neutral_off: Setting & { depth_m: number; mount: Mount };
  neutral_on: Setting & { depth_m: number; mount: Mount };
}

/** What is left to the camera. */
export interface AutoStepCodes {
  set_modes: {
    exposure_mode: ExposureMode;
    white_balance_mode: BalanceMode;
    exposure: { shutter_s: number };
  };
  /** With what to compensate the camera's own exposure by, for the subject, in stops. */
  exposure_by_itself: { stops: number };
  balance_by_itself: { cast: number };
  balance_in_kelvin: { cct_K: number; cast: number };
}

/** Steps of a plan: what to do, and why. */
export interface StepCodes extends LampStepCodes, ChangeStepCodes, AutoStepCodes {
  mount_filter: LensFilterStep;
  /** The caller's stays on, though another might be a little better. */
  keep_filter: Omit<LensFilterStep, "instead_of"> & { better?: NamedFilter };
  no_filter: { error: number; instead_of?: NamedFilter };
  no_filter_for_lamps: { instead_of?: NamedFilter };
  /** Where no filter mends the colours, and lamps would. */
  lamps_would_help: { error: number };
  set_frame: { exposure: { shutter_s: number }; bits: number; log?: true };
  /** `against_sun` where the sun is in the picture, `log` where white has a place of its own on the curve. */
  start_exposure: Setting & { ev: number; against_sun?: true; log?: true };
  /**
   * `sun_behind` where the plan counts on the sun behind the camera; `far` where the subject is out of reach, and the water between it
   * and a card at arm's length leaves a cast; `bands` where the sun's light flickers through the waves; `holds` where no other balance
   * follows on a long way down.
   */
  balance_on_card: {
    cast: number;
    sun_behind?: true;
    bands?: true;
    holds?: Holds;
    far?: { distance_m: number; cast: number };
  };
  balance_on_card_in_lamp_light: { cct_K?: number; cast: number };
  /** With the tolerance that was asked for where balances would have come too close. */
  balance_again: {
    depths_m: readonly number[];
    tolerance: number;
    asked?: { tolerance: number };
    /** The exposure is set first: it is not left to the camera. */
    exposed?: true;
    /** Of the last one, where a long way follows. */
    holds?: Holds;
  };
  /** Little by little, until it is so at a depth. */
  deep_exposure: Setting & { stops: number; to_m: number };
  shallow_exposure: Setting & { stops: number; to_m: number };
  too_dark: { iso: number; f_number: number; shortfall_stops: number; ways: readonly Coded<WaysToPay>[] };
  come_close: { percent: number; distance_m: number };
  /** `gone_m` where the dive goes that deep, `from_start` where it begins below. */
  grade_red: { acceptable_m: number; gone_m?: number; left?: { error: number } };
  grade_no_red: { gone_m?: number; from_start?: true };
  lamps_off_before_air: Nothing;
  /** `profile` where pictures are graded by the profile of a chart. */
  rinse: { gear: readonly Gear[]; profile?: true };
}

import type { FilterChange } from "../scene/scene.js";
import type { Coded, Nothing } from "./coded.js";
import type { NamedFilter } from "./named-filter.js";
import type { WaysOut } from "./ways-out.js";
import type { WaysToPay } from "./ways-to-pay.js";

/** What is rinsed and dried. */
export type Gear = "housing" | "filter" | "lamps";

/** How a filter is changed under water. */
export type Mount = Exclude<FilterChange, "none">;

/** Steps of a plan: what to do, and why. */
export interface StepCodes {
  mount_filter: { filter: NamedFilter; with_e: number; without_e: number; loss_stops: number };
  carry_filter: {
    filter: NamedFilter;
    mount: Mount;
    from_m: number;
    to_m: number;
    with_e: number;
    without_e: number;
    loss_stops: number;
  };
  no_filter: { error: number };
  no_filter_for_lamps: Nothing;
  neutral_density: { density: number; stops: number; f_number?: number };
  set_frame: { exposure: { shutter_s: number }; bits: number };
  pack_card: Nothing;
  check_lamps: { lux: number; distance_m: number };
  filter_lamps: { filter: NamedFilter; left: number };
  start_exposure: { iso: number; f_number: number; ev: number; is_too_bright: boolean };
  balance_on_card: { cast: number };
  balance_on_card_in_lamp_light: { cct_K?: number; cast: number };
  balance_again: { depths_m: readonly number[]; tolerance: number };
  filter_in: { depth_m: number; stops: number; mount: Mount };
  filter_out: { depth_m: number; stops: number; mount: Mount };
  deep_exposure: { iso: number; f_number: number; stops: number };
  too_dark: { iso: number; f_number: number; shortfall_stops: number; ways: readonly Coded<WaysToPay>[] };
  come_close: { percent: number; distance_m: number };
  lamps_off: { split: number; red_excess: number; cost: number };
  lamps_other_way: { way: Coded<WaysOut>; left: number };
  lamps_from: { depth_m: number };
  lamps_lead: { green: number };
  lamps_hardly_show: { green: number };
  lamps_only: { red: number; green: number; blue: number };
  mixing_zone: { from_m: number; to_m: number };
  hold_lamps_wide: { percent: number };
  grade_red: { acceptable_m: number; gone_m: number };
  lamps_off_before_air: Nothing;
  rinse: { gear: readonly Gear[] };
}

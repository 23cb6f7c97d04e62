/**
 * What every text of an answer advises, by its code. Complete by type: a text with a new code does not compile until it is judged
 * here. Tests only.
 */

import type { AttenuationReasons } from "../codes/attenuation.js";
import type { BalanceSteps } from "../codes/balance-procedure.js";
import type { LightCauses, MountingCauses } from "../codes/causes.js";
import type { ColourRecoveryReasons } from "../codes/colour-recovery.js";
import type { ExposureLossReasons } from "../codes/exposure-loss.js";
import type { FilterChoiceReasons } from "../codes/filter-choice.js";
import type { FilterMountingReasons } from "../codes/filter-mounting.js";
import type { LightReasons } from "../codes/light.js";
import type { MixedLightReasons } from "../codes/mixed-light.js";
import type { MountingSteps } from "../codes/mounting-steps.js";
import type { StepCodes } from "../codes/steps.js";
import type { LampPlan } from "../codes/summary.js";
import type { TakeCodes } from "../codes/take.js";
import type { WhiteBalanceReasons } from "../codes/white-balance.js";
import type { WayToPayKind } from "../result/exposure-loss.js";
import type { WayOutKind } from "../result/mixed-light.js";

/** A filter is changed on land or under water, as the scene's mount has it. */
export type Advised = "light" | "way_up" | "balance" | "closer" | "filter" | "filter_in_water";

type Judged<Catalogue> = { readonly [Code in keyof Catalogue]: readonly Advised[] };

/** How texts are told apart in answers. */
export interface Classified {
  reasons: Judged<
    AttenuationReasons &
      ColourRecoveryReasons &
      ExposureLossReasons &
      FilterChoiceReasons &
      LightReasons &
      MixedLightReasons &
      WhiteBalanceReasons
  >;
  mountingReasons: Judged<FilterMountingReasons>;
  waysToPay: Judged<Record<WayToPayKind, unknown>>;
  waysOut: Judged<Record<WayOutKind, unknown>>;
  steps: Judged<StepCodes>;
  lampPlans: Judged<Record<LampPlan, unknown>>;
  take: Judged<TakeCodes>;
  balanceSteps: Judged<BalanceSteps>;
  mountingSteps: Judged<MountingSteps>;
  causes: Judged<LightCauses & MountingCauses>;
}

const NOTHING = [] as const;

export const CLASSIFIED: Classified = {
  reasons: {
    red_goes_first: NOTHING,
    no_daylight_relative: NOTHING,
    sun_path: NOTHING,
    red_record: NOTHING,
    filter_helps_red: NOTHING,
    filter_does_not_help_red: NOTHING,
    same_settings_no_gain: NOTHING,
    red_is_gone: NOTHING,
    red_codes: NOTHING,
    too_bright: NOTHING,
    aperture_can_close: NOTHING,
    too_dark: ["light", "way_up"],
    exposure_fits: NOTHING,
    levels_apart: NOTHING,
    auto_exposes_picture: NOTHING,
    filter_makes_it_darker: ["filter"],
    any_filter_would_worsen: NOTHING,
    port_takes: NOTHING,
    water_takes_most: NOTHING,
    haze_is_the_limit: ["closer"],
    subject_out_of_sight: ["closer"],
    filter_earns: ["filter"],
    no_filter_earns: NOTHING,
    no_filter_owned: NOTHING,
    finish_judged: NOTHING,
    finish_turns_choice: NOTHING,
    change_at_depth: ["filter", "way_up", "balance"],
    serves_part_of_range: ["filter"],
    part_would_gain: NOTHING,
    denser_gains_nothing_below: NOTHING,
    only_lamps_would_help: ["light", "way_up", "closer"],
    filter_brings_balance_into_reach: ["filter"],
    balance_out_of_reach: NOTHING,
    balance_in_reach_without: NOTHING,
    light_to_spare: NOTHING,
    light_is_too_much: NOTHING,
    colour_filter_as_neutral: NOTHING,
    light_has_run_out: NOTHING,
    light_holds_density: NOTHING,
    densities_as_good: ["filter"],
    no_red_to_gain: NOTHING,
    filter_adds_no_red: ["filter"],
    lamps_are_the_only_light: ["light", "balance"],
    near_tie: NOTHING,
    filter_shape_assumed: NOTHING,
    filter_trade_rule_blue: ["filter"],
    filter_trade_rule_green: ["filter"],
    cct_without_meaning: ["balance"],
    cct_beyond_locus: ["balance"],
    red_not_only_transmitted: NOTHING,
    sun_stands: NOTHING,
    cloud_fills_shadow: NOTHING,
    clock_shows_twice: NOTHING,
    night_there: ["light"],
    overhead_cuts: NOTHING,
    lamps_only: ["light", "balance"],
    daylight_only: NOTHING,
    lights_fight: ["light"],
    to_lead: ["light", "closer"],
    lamps_lead: ["light", "balance"],
    daylight_leads: ["light", "balance"],
    mixing_zone: ["light"],
    lit_haze: ["light", "closer"],
    upright_subject: NOTHING,
    kelvin_leaves_the_water: ["light", "balance"],
    balance_again: ["balance"],
    one_balance_serves: ["balance"],
    balance_in_reach: NOTHING,
    balance_falls_short: NOTHING,
    kelvin_balance_leaves: NOTHING,
    auto_balance_leaves: NOTHING,
  },
  mountingReasons: {
    mount_asked_does_not_fit: NOTHING,
    mount_no_room_for_two: NOTHING,
    mount_nothing_fits: NOTHING,
    mount_on_lens: ["filter"],
    mount_outside_fixed: ["filter_in_water"],
    mount_outside_changed: ["filter_in_water"],
    mount_over_window: ["filter_in_water"],
    mount_behind_lens: ["filter"],
    mount_window_is_port: NOTHING,
    mount_front_bulges: NOTHING,
    mount_lens_without_thread: NOTHING,
    mount_field_too_wide: NOTHING,
    mount_hits_dome: NOTHING,
    mount_near_dome: NOTHING,
    mount_hits_port: NOTHING,
    mount_near_port: NOTHING,
    mount_zoom_room_unknown: NOTHING,
    mount_wet_lens_in_the_way: NOTHING,
    mount_wet_lens_stacked: NOTHING,
    wet_lens_not_on_dome: NOTHING,
    ghosts_inside: NOTHING,
    ghosts_outside: NOTHING,
    filter_weighs: NOTHING,
    mount_not_before_dome: NOTHING,
    mount_port_without_thread: NOTHING,
    mount_flip_seat_unknown: NOTHING,
    mount_clip_seat_unknown: NOTHING,
    mount_frame_for_housing: NOTHING,
    mount_holder_too_small: NOTHING,
    mount_holder_too_large: NOTHING,
    mount_holder_loose: NOTHING,
    mount_holder_to_ask_for: NOTHING,
    mount_dome_room_unknown: NOTHING,
    mount_not_an_action_camera: NOTHING,
    mount_lens_stays_on: NOTHING,
    mount_fixed_for_dive: NOTHING,
    mount_other_change: NOTHING,
    rings_not_needed: NOTHING,
    rings_filter_thread_assumed: NOTHING,
    rings_close: NOTHING,
    rings_missing: NOTHING,
    rings_too_thick: NOTHING,
    rings_wrong_way: NOTHING,
    rings_narrow: NOTHING,
    rings_step_down: NOTHING,
    corners_clear: NOTHING,
    corners_slight: NOTHING,
    corners_dark: NOTHING,
    corners_black: NOTHING,
    corners_close: NOTHING,
    corners_unknown: NOTHING,
    corners_test: NOTHING,
    pupil_distance_assumed: NOTHING,
    format_assumed: NOTHING,
    flat_port_narrows: NOTHING,
    dome_keeps_field: NOTHING,
    dome_brings_near: NOTHING,
    sheet_shifts_focus: NOTHING,
    sheet_all_in_reach: NOTHING,
    sheet_infinity_hidden: NOTHING,
    sheet_infinity_lost: NOTHING,
    sheet_focus_unknown: NOTHING,
    sheet_measure_opening: NOTHING,
    sheet_cut: NOTHING,
  },
  waysToPay: {
    iso: NOTHING,
    aperture: NOTHING,
    shutter: NOTHING,
    lamp: ["light", "balance"],
    higher_sun: NOTHING,
    shallower: ["way_up"],
    filter_off: ["filter"],
    neutral_density: NOTHING,
  },
  waysOut: {
    lamps_off: ["light", "balance"],
    lamp_filter: ["light", "balance"],
    balance_to_lamps: ["light", "balance"],
    come_closer: ["light", "balance", "closer"],
  },
  steps: {
    mount_filter: ["filter"],
    keep_filter: ["filter"],
    carry_filter: ["filter"],
    no_filter: NOTHING,
    no_filter_for_lamps: ["light"],
    neutral_density: NOTHING,
    set_frame: NOTHING,
    check_lamps: ["light"],
    filter_lamps: ["light"],
    keep_lamp_filters: ["light"],
    bare_lamps: ["light"],
    start_exposure: NOTHING,
    balance_on_card: ["balance"],
    set_modes: NOTHING,
    exposure_by_itself: NOTHING,
    balance_by_itself: ["balance"],
    balance_in_kelvin: ["balance"],
    balance_on_card_in_lamp_light: ["light", "balance"],
    balance_again: ["balance", "way_up"],
    filter_in: ["filter", "balance", "way_up"],
    filter_out: ["filter", "balance", "way_up"],
    neutral_off: NOTHING,
    neutral_on: ["way_up"],
    deep_exposure: NOTHING,
    shallow_exposure: ["way_up"],
    // May name a lamp and a shallower depth among the ways to pay.
    too_dark: ["light", "way_up"],
    come_close: ["closer"],
    // May be to bring the lamps closer.
    lamps_off: ["light", "balance"],
    lamps_from: ["light", "balance"],
    lamps_lead: ["light", "balance"],
    lamps_hardly_show: ["light", "balance"],
    lamps_only: ["light", "balance"],
    mixing_zone: ["light"],
    grade_red: NOTHING,
    grade_no_red: NOTHING,
    lamps_off_before_air: ["light", "way_up"],
    rinse: NOTHING,
  },
  lampPlans: {
    none: NOTHING,
    lamps_off: ["light"],
    lamps_with_filter: ["light", "balance"],
    lamps_lead: ["light", "balance"],
    lamps_only: ["light", "balance"],
    daylight_leads: ["light"],
  },
  take: {
    lens_filter: ["filter"],
    neutral_density: NOTHING,
    lamp_filters: ["light"],
    lamp_filters_lacking: ["light"],
    lamp: ["light"],
    card: ["balance"],
    spares: NOTHING,
  },
  balanceSteps: {
    balance_near: ["balance"],
    lamps_on: ["light"],
    card_in_lamp_light: ["light", "balance"],
    fill_frame: ["balance"],
    no_kelvin_fits: NOTHING,
    kelvin: ["light", "balance"],
    keep_distance: ["light", "balance"],
    lamps_away: ["light"],
    // Filters are in the caution on balances too.
    filter_first: ["balance"],
    card_upright: ["balance"],
    going_down: ["balance"],
    coming_up: ["balance", "way_up"],
    out_of_reach: ["balance"],
    light_changes: ["balance"],
    leave_to_camera: ["balance"],
    set_kelvin: ["balance"],
    card_would_do_better: ["balance"],
  },
  mountingSteps: {
    cut_practice: NOTHING,
    cut_sheet: NOTHING,
    slide_in: ["filter"],
    tape_on: ["filter"],
    refocus: NOTHING,
    sheet_set: NOTHING,
    sheet_renew: NOTHING,
    tape_renew: ["filter"],
    dry_land_only: ["filter"],
    chain_assemble: NOTHING,
    wall_test: NOTHING,
    clear_of_port: NOTHING,
    no_grit: ["filter_in_water"],
    no_bubbles: ["filter_in_water"],
    tether: ["filter_in_water"],
    change_practised: ["filter_in_water"],
    rinse: NOTHING,
  },
  causes: {
    water_type_resolution: NOTHING,
    kd_measurement: NOTHING,
    clarity_reading: NOTHING,
    beam_to_diffuse: NOTHING,
    spectral_shape: NOTHING,
    hue_name: NOTHING,
    scattering_per_water: NOTHING,
    chlorophyll_relation: NOTHING,
    card_noise: NOTHING,
    water_scattering: NOTHING,
    path_scattering: ["closer"],
    sensor: NOTHING,
    daylight_level: NOTHING,
    upright_share: NOTHING,
    light_field: NOTHING,
    reference_sun: NOTHING,
    sea_floor: NOTHING,
    lamp_beam: NOTHING,
    lamp_aim: NOTHING,
    overhead: NOTHING,
    filter_edge: NOTHING,
    filter_width: NOTHING,
    full_well: NOTHING,
    lamp_offset: ["light"],
    pupil_distance: NOTHING,
  },
};

import type { Nothing } from "./coded.js";

/** Why something is, or was, to be done at a moment of a dive. */
export interface MomentReasons {
  moment_first_balance: Nothing;
  /** Shift of grey since the last balance that a new one takes out, and what is let pass. */
  moment_balance_again: { shift_delta_e00: number; tolerance_delta_e00: number };
  moment_balance_done: { shift_delta_e00: number; tolerance_delta_e00: number };
  moment_balance_behind_change: Nothing;
  moment_filter_on: { depth_m: number };
  moment_filter_off: { depth_m: number };
  /** What is metered since the exposure was last set, stops: above 0 where it is brighter. */
  moment_exposure: { stops: number };
}

/** How a clip stands. */
export interface ClipReasons {
  clip_balance_held: { shift_delta_e00: number; tolerance_delta_e00: number };
  clip_balance_close: { shift_delta_e00: number; tolerance_delta_e00: number };
  /** `after_s` since the clip began. */
  clip_balance_lost: { shift_delta_e00: number; tolerance_delta_e00: number; after_s: number };
  clip_balance_not_set: Nothing;
}

/** What cards of the dive say of what was predicted. Depths in metres, the rest in the unit of what is marked. */
export interface MarkReasons {
  mark_exposure_agrees: { depth_m: number; predicted_ev100: number; used_ev100: number; next_ev100: number };
  /** Stops that there was more or less light than predicted. */
  mark_exposure_brighter: ExposureMark;
  mark_exposure_darker: ExposureMark;
  mark_water_agrees: { channel: Channel };
  /** Percent by which light of a channel fades faster or more slowly than the water of the site has it. */
  mark_water_faster: { channel: Channel; percent: number };
  mark_water_slower: { channel: Channel; percent: number };
  mark_filter_agrees: FilterMark;
  mark_filter_differs: FilterMark;
  /** Stops between channels by which a card that was balanced on stays from neutral. */
  mark_reach_neutral: { depth_m: number };
  mark_reach_agrees: ReachMark;
  mark_reach_shorter: ReachMark;
  mark_reach_farther: ReachMark;
}

type Channel = "red" | "green" | "blue";

interface ExposureMark {
  depth_m: number;
  predicted_ev100: number;
  used_ev100: number;
  next_ev100: number;
  stops: number;
}

interface ReachMark {
  depth_m: number;
  measured_stops: number;
  predicted_stops: number;
}

interface FilterMark {
  measured: number;
  low: number;
  high: number;
  nominal: number;
}

/** What a timeline rests on. */
export interface TimelineReasons {
  timeline_as_planned: Nothing;
  timeline_as_done: { events: number };
  timeline_filmed: { min_depth_m: number; max_depth_m: number; clips: number };
  /** Steps of the plan at depths that the dive did not come back to. */
  timeline_not_passed: { depths_m: number[] };
  timeline_exposures_left_out: { moments: number };
  timeline_drawn: { stops: number; delta_e00: number };
  timeline_spread_shared: Nothing;
}

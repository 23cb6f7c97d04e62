import type { Nothing } from "./coded.js";
import type { NamedFilter } from "./named-filter.js";
import type { Setting } from "./steps.js";

/** What is done with the lamps. */
export type LampPlan =
  | "none"
  | "lamps_off"
  | "lamps_with_filter"
  | "lamps_with_daylight"
  | "lamps_lead"
  | "lamps_only"
  | "daylight_leads";

/** Settings at a depth. */
export interface Exposed extends Setting {
  depth_m: number;
}

interface CloseLamps {
  close_lamps: { plan: LampPlan; filter?: NamedFilter; probability: number };
}

/** Plans that are nearly as good, and how likely each is the better one. */
export interface CloseCalls extends CloseLamps {
  close_filter: { filter: NamedFilter; probability: number };
}

/** What is done with the lamps, and what else could be. */
export interface LampSummaryCodes extends CloseLamps, Record<Exclude<LampPlan, "none">, Nothing> {}

/** What a plan comes to, in a few sentences: also what is done with the lamps. */
export interface SummaryCodes extends CloseCalls, LampSummaryCodes {
  no_filter: Nothing;
  mount: { filter: NamedFilter };
  carry: { filter: NamedFilter; from_m: number; to_m: number };
  too_dark: { depth_m: number; shortfall_stops: number };
  /** Where filming begins, and at the deep end unless the settings stay. */
  expose: { from: Exposed; to?: Exposed };
  expose_by_itself: Nothing;
  balance: { again: number };
  balance_by_itself: Nothing;
  balance_in_kelvin: { cct_K: number };
}

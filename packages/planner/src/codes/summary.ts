import type { Nothing } from "./coded.js";
import type { NamedFilter } from "./named-filter.js";

/** What is done with the lamps. */
export type LampPlan =
  | "none"
  | "lamps_off"
  | "lamps_with_filter"
  | "lamps_lead"
  | "lamps_only"
  | "daylight_leads";

/** Settings at a depth. */
export interface Exposed {
  depth_m: number;
  iso: number;
  f_number: number;
}

/** What a plan comes to, in a few sentences: also what is done with the lamps. */
export interface SummaryCodes extends Record<Exclude<LampPlan, "none">, Nothing> {
  no_filter: Nothing;
  /** With the runner-up where the two are a near tie. */
  mount: { filter: NamedFilter; tie_with?: NamedFilter };
  carry: { filter: NamedFilter; from_m: number; to_m: number; tie_with?: NamedFilter };
  too_bright: { depth_m: number; excess_stops: number; density: number; f_number?: number };
  too_dark: { depth_m: number; shortfall_stops: number };
  /** Where filming begins, and at the deep end unless the settings stay. */
  expose: { from: Exposed; to?: Exposed };
  balance: { again: number };
}

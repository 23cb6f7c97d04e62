import type { NamedFilter } from "./named-filter.js";

/** Why a filter that is owned stays ashore. */
export interface LeftAshoreReasons {
  /** How many times the colour error of the plan it leaves; hardly more where it loses by the light that it costs. */
  lens_filter_ashore: { filter: NamedFilter; times: number; error: number };
  neutral_ashore: { filter: NamedFilter };
  /** With the cast that it would leave between lamps and daylight, where both are there to be matched. */
  lamp_filter_ashore: { filter: NamedFilter; cast?: { left: number } };
}

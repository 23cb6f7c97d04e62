import type { FilterKind } from "../scene/scene.js";
import type { Nothing } from "./coded.js";

/** Ways out where lamps and daylight fight. */
export interface WaysOut {
  lamps_off: { cost_stops: number };
  lamp_filter: {
    red: number;
    green: number;
    blue: number;
    kind: FilterKind;
    density: number;
    is_seen: boolean;
  };
  balance_to_lamps: Nothing;
  balance_to_both: Nothing;
  come_closer: { distance_m: number };
}

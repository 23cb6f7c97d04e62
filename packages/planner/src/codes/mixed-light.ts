import type { Nothing } from "./coded.js";

/** Reasons on mixed light. */
export interface MixedLightReasons {
  lamps_only: { red: number; green: number; blue: number };
  daylight_only: Nothing;
  lights_fight: { depth_m: number; split: number; red_excess: number };
  lamps_lead: { depth_m: number; green: number };
  daylight_leads: { depth_m: number; green: number };
  mixing_zone: { from_m: number; to_m: number };
  lit_haze: { percent: number; low: number; high: number };
  upright_subject: Nothing;
}

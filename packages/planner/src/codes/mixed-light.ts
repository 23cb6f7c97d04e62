import type { Nothing } from "./coded.js";

/** Whether lumens that are needed are to be had: from the scene's lamps as they are, from closer, from stronger ones, or not at all. */
export type LumensVerdict = "enough" | "closer" | "stronger" | "out_of_reach";

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
  /** How much light leads daylight by so much, and whether it is to be had. */
  to_lead: {
    depth_m: number;
    distance_m: number;
    stops: number;
    likely_lm: number;
    low_lm: number;
    high_lm: number;
    verdict: LumensVerdict;
    closer?: { distance_m: number };
  };
}

import type { Overhead } from "../scene/scene.js";
import type { Nothing } from "./coded.js";

/** Reasons on the light itself, which several decisions give. */
export interface LightReasons {
  /** No colour temperature: too far from the Planckian locus, in CIE 1960 uv. */
  cct_without_meaning: { depth_m: number; duv: number };
  /** No colour temperature: bluer than any glowing body. */
  cct_beyond_locus: { depth_m: number };
  /** Below this depth the last red is made in the water itself. */
  red_not_only_transmitted: { depth_m: number };
  /** How much more light cloud gives the subject than a clear sky would. */
  cloud_fills_shadow: { stops: number };
  /** @property time instant in UTC, RFC 3339 @property local what the clock there shows, where the scene says it */
  sun_stands: { elevation_deg: number; azimuth_deg: number; time: string; local?: { time: string } };
  /** @property time the instant that is meant, in UTC, RFC 3339 */
  clock_shows_twice: { time: string };
  night_there: Nothing;
  /** What lies over the diver, and how much light that costs. */
  overhead_cuts: { overhead: Overhead; stops: number };
}

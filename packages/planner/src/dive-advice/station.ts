import { densityToStops } from "@sunfathom/optics";
import { type ExposureLimits, settingsFor } from "../camera/exposure-settings.js";
import type { Setting } from "../codes/steps.js";
import { sensitivityFor } from "../exposure-loss/sensitivity.js";
import type { NonEmpty } from "../lists/non-empty.js";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { FilterChange } from "../scene/scene.js";
import type { Leg } from "./legs.js";

/** A depth of one leg, and how the camera is set there. */
export interface Station {
  leg: Leg;
  exposure: ExposureAtDepth;
  setting: Setting;
}

export interface Neutral {
  density: number;
  /** What is too much at the brightest place, in stops. */
  excess_stops: number;
  mount: FilterChange;
  /** The caller's, if one is owned. */
  id?: string;
  /** Where it comes off going down and goes on coming up; absent where it stays on. */
  off?: { leg: Leg; depth_m: number; behind: Setting; without: Setting };
}

export interface ExposurePlan {
  /** Shallow first; where legs meet there is one for each. */
  stations: NonEmpty<Station>;
  neutral?: Neutral;
}

/** How far the camera is off at a level of light, in stops too bright. */
export const offBy = (ev100: number, limits: ExposureLimits): number =>
  settingsFor(sensitivityFor(ev100), limits).off_by_stops;

/** How the camera is set for a level of light, behind neutral density where there is one. */
export function set(ev100: number, limits: ExposureLimits, density?: number): Setting {
  const { iso, f_number } = settingsFor(
    sensitivityFor(ev100 - (density === undefined ? 0 : densityToStops(density))),
    limits,
  );
  return { iso, f_number, ...(density === undefined ? {} : { behind: { density } }) };
}

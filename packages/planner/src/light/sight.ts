/** How far one sees, and whether the subject is within that. */
import { VISIBILITY_INDEX, visibilityFromBeam_m } from "@sunfathom/optics";
import { valueAt } from "../lists/non-empty.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { Conditions } from "./conditions.js";
import { underwater } from "./underwater.js";

/** Horizontal visibility of a black disc by daylight, m (Davies-Colley 1988; Zaneveld & Pegau 2003). */
export const visibilityOf_m = (conditions: Conditions): number =>
  visibilityFromBeam_m(
    valueAt(underwater(conditions, NOMINAL).water.beam_attenuation_per_m, VISIBILITY_INDEX),
  );

/** Whether haze hides the subject from the camera by day. */
export const isOutOfSight = (conditions: Conditions): boolean =>
  conditions.daylight !== undefined && conditions.scene.subject_distance_m > visibilityOf_m(conditions);

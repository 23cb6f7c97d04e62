import { multiply } from "@sunfathom/optics";
import { rawOf } from "../camera/sensor-profile.js";
import type { Conditions } from "../light/conditions.js";
import { lampLightAt, towardsCamera, type Underwater, underwater } from "../light/underwater.js";
import { USUAL_LAMP } from "../light/usual-lamp.js";
import { mapBoth, mapEach, type NonEmpty } from "../lists/non-empty.js";
import type { ToLead } from "../result/mixed-light.js";
import type { Lamp } from "../scene/scene.js";
import { causesOf } from "../uncertainty/causes.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { mapRising } from "../uncertainty/percentiles.js";
import { propagate } from "../uncertainty/propagate.js";
import { lightsAt } from "./lights.js";

/** More than two strong video lights for diving give together: a judgement, from memory. */
const MORE_THAN_IS_CARRIED_LM = 60_000;
/** What stands for all that is more: no number means anything there. */
const MOST_LM = 1e9;
/** Distances at which the caller's own lamps would do are searched in steps of 5 cm, down to where a lamp no longer lights a subject evenly. */
const STEP_M = 0.05;
const NEAREST_M = 0.2;

/** By how many stops lamps outshine daylight in green, as both reach the camera. */
function lead(world: Underwater, depth_m: number, distance_m: number): number {
  const { daylight, profile } = lightsAt(world, depth_m);
  const path = towardsCamera(world);
  const [, lamps] = rawOf(profile, multiply(lampLightAt(world, { distance_m }), path));
  const [, day] = rawOf(profile, multiply(daylight, path));
  return Math.log2(lamps / day);
}

/**
 * The inverse question, depth by depth: how many lumens, from a distance, let lamps outshine daylight by so many stops in green. Beam and
 * colour are those of the scene's lamps, or a usual one's. Undefined where nobody asks, or without daylight to lead.
 */
export function toLeadAt(
  conditions: Conditions,
  depths: Readonly<NonEmpty<number>>,
): NonEmpty<ToLead> | undefined {
  const { scene, daylight } = conditions;
  const { wanted_lead_stops: wanted, wanted_lead_distance_m: distance_m } = scene;
  if (wanted === undefined || distance_m === undefined || !daylight) return undefined;
  const owned = scene.lamps.length > 0;
  const usual: Lamp = { ...USUAL_LAMP, beam_angle_medium: "water", flux_lm: 1000, count: 1 };
  const asked: Conditions = { ...conditions, scene: { ...scene, lamps: owned ? scene.lamps : [usual] } };
  const flux_lm = asked.scene.lamps.reduce((sum, lamp) => sum + lamp.flux_lm * lamp.count, 0);
  const propagated = propagate((nuisance) => {
    const world = underwater(asked, nuisance);
    return {
      depths: mapEach(depths, (depth_m) => ({
        log2Lumens: Math.log2(flux_lm) + wanted - lead(world, depth_m, distance_m),
      })),
    };
  }, causesOf(asked));
  const world = underwater(asked, NOMINAL);
  return mapBoth(depths, propagated.estimates.depths, (depth_m, { log2Lumens }) => {
    const lumens_needed_lm = mapRising(log2Lumens, (log2) => Math.min(MOST_LM, 2 ** log2));
    const own_m = owned ? ownDistance(world, depth_m, wanted) : undefined;
    return {
      lumens_needed_lm,
      lumens_verdict: verdictOf(lumens_needed_lm.likely, owned ? flux_lm : 0, own_m),
      ...(own_m === undefined ? {} : { own_lamps_lead_from_m: own_m }),
    };
  });
}

function verdictOf(needed_lm: number, own_lm: number, own_m: number | undefined): ToLead["lumens_verdict"] {
  if (needed_lm <= own_lm) return "enough";
  if (own_m !== undefined) return "closer";
  return needed_lm <= MORE_THAN_IS_CARRIED_LM ? "stronger" : "out_of_reach";
}

/** The largest distance at which the scene's own lamps do it; undefined where they do not from any. */
function ownDistance(world: Underwater, depth_m: number, wanted: number): number | undefined {
  const farthest = Math.max(...world.scene.lamps.map(({ distance_m }) => distance_m));
  for (let step = Math.floor(farthest / STEP_M); step * STEP_M >= NEAREST_M; step--) {
    if (lead(world, depth_m, step * STEP_M) >= wanted) return step * STEP_M;
  }
  return undefined;
}

import type { Coded } from "../codes/coded.js";
import { codedOf } from "../codes/coded.js";
import type { WaysOut } from "../codes/ways-out.js";
import { conditionsOf } from "../light/conditions.js";
import { cardDaylightAt } from "../light/daylight-at-depth.js";
import { requireLight } from "../light/require-light.js";
import { lampLightAt, underwater } from "../light/underwater.js";
import { USUAL_LAMP } from "../light/usual-lamp.js";
import { leadOf, lightsAt, verdictAt } from "../mixed-light/lights.js";
import { waysOut } from "../mixed-light/ways-out.js";
import type { MixedLightVerdict } from "../result/mixed-light.js";
import type { Lamp, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";

/** Which light leads on the subject, by depth and by the distance from which video lights shine on it. */
export interface MixedLightMap {
  /** Middles of rows and of columns, evenly spaced from 0 to the ends of the picture. */
  depths_m: number[];
  distances_m: number[];
  end_depth_m: number;
  end_distance_m: number;
  /** Depth by depth, at each distance. */
  verdicts: MixedLightVerdict[][];
  /** Flux of all video lights together, lm. */
  flux_lm: number;
  /** Whether the scene has none, and a usual one was taken. */
  is_assumed: boolean;
  /** Distance of the nearest of them. */
  own_distance_m: number;
  min_depth_m: number;
  max_depth_m: number;
  /** Middle of the filmed depths, with what leads there from that distance. */
  depth_m: number;
  verdict: MixedLightVerdict;
  /** Where the two fight there, the best first. */
  ways_out: Coded<WaysOut>[];
}

const ROWS = 24;
const COLUMNS = 32;
const LEAST_DISTANCE_M = 1.6;
const LEAST_DEPTH_M = 4;
const BEYOND_DIVE = 1.2;
/** A wide video light such as many have on a small rig. From memory, no published source. */
const ASSUMED: Lamp = { ...USUAL_LAMP, flux_lm: 4000, count: 2, beam_angle_medium: "water" };

const middles = (count: number, end: number): number[] =>
  Array.from({ length: count }, (_, i) => ((i + 0.5) * end) / count);

/**
 * Verdicts as `mixed-light` gives them, all video lights moved to each distance. Where the scene has none, with two usual ones.
 * @throws SceneProblem as `mixedLight` does
 */
export function mixedLightMap(given: Scene): MixedLightMap {
  const is_assumed = given.lamps.length === 0;
  const scene: Scene = is_assumed ? { ...given, lamps: [ASSUMED] } : given;
  const conditions = conditionsOf(scene);
  requireLight(conditions);
  const world = underwater(conditions, NOMINAL);
  const { min_depth_m, max_depth_m, lamps, bottom_depth_m = Infinity } = scene;
  const own_distance_m = Math.min(...lamps.map(({ distance_m }) => distance_m));
  const end_depth_m = Math.min(bottom_depth_m, Math.max(LEAST_DEPTH_M, Math.ceil(BEYOND_DIVE * max_depth_m)));
  const end_distance_m = Math.ceil(10 * Math.max(LEAST_DISTANCE_M, 2 * own_distance_m)) / 10;
  const depths_m = middles(ROWS, end_depth_m);
  const distances_m = middles(COLUMNS, end_distance_m);
  const lampsFrom = distances_m.map((distance_m) => lampLightAt(world, { distance_m }));
  const { profile } = lightsAt(world, max_depth_m);
  const depth_m = (min_depth_m + max_depth_m) / 2;
  const verdict = verdictAt(world, depth_m);
  return {
    depths_m,
    distances_m,
    end_depth_m,
    end_distance_m,
    verdicts: depths_m.map((depth) => {
      if (!world.daylight) return distances_m.map(() => "lamps_only");
      const daylight = cardDaylightAt(world, depth);
      return lampsFrom.map((lamp) => leadOf({ daylight, lamps: lamp, profile }));
    }),
    flux_lm: lamps.reduce((sum, { flux_lm, count }) => sum + flux_lm * count, 0),
    is_assumed,
    own_distance_m,
    min_depth_m,
    max_depth_m,
    depth_m,
    verdict,
    ways_out:
      verdict === "lights_fight"
        ? waysOut({ world, ...lightsAt(world, depth_m) }).map((way) => codedOf<WaysOut>(way))
        : [],
  };
}

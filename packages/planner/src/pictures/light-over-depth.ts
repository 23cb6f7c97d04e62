import { causesOfFading } from "../attenuation/attenuation.js";
import { topLight } from "../attenuation/losses.js";
import { redDownTo_m } from "../attenuation/red-depths.js";
import { cautionsFor } from "../cautions/cautions-for.js";
import { conditionsOf } from "../light/conditions.js";
import { underwater } from "../light/underwater.js";
import { itemAt } from "../lists/non-empty.js";
import type { Caution, Estimate } from "../result/common.js";
import type { Scene } from "../scene/scene.js";
import type { Each } from "../uncertainty/figures.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { mapFalling } from "../uncertainty/percentiles.js";
import { propagate } from "../uncertainty/propagate.js";
import { type BandLosses, bandLosses, type Light } from "./bands-left.js";

/** How the light fades from just below the surface to beyond where it is filmed, as a picture shows it. */
export interface LightOverDepth {
  /** Evenly from 0 m to the lower end of the picture. */
  depths_m: number[];
  /** Percent of what there is just below the surface, at each of these depths. */
  left_percent: Record<Light, Estimate[]>;
  /** The same at the deepest depth of the scene. */
  left_at_max_percent: Record<Light, Estimate>;
  red_to_tenth_depth_m: Estimate;
  red_to_hundredth_depth_m: Estimate;
  min_depth_m: number;
  max_depth_m: number;
  has_daylight: boolean;
  cautions: Caution[];
}

const STEPS = 40;
/** Beyond what is filmed, and beyond where red is down to a hundredth, as shares of these depths. */
const BEYOND_DIVE = 1.15;
const BEYOND_RED = 1.1;
const LEAST_M = 4;

const percentOf = (stops: Estimate): Estimate => mapFalling(stops, (s) => 100 * 2 ** -s);

const percentsOf = ({ red, green, blue, eye }: Each<BandLosses, Estimate>): Record<Light, Estimate[]> => ({
  red: red.map(percentOf),
  green: green.map(percentOf),
  blue: blue.map(percentOf),
  eye: eye.map(percentOf),
});

/**
 * Light by depth over the whole of the water that a picture shows, with the bounds of what is not known.
 * @throws SceneProblem as `attenuation` does
 */
export function lightOverDepth(scene: Scene): LightOverDepth {
  const conditions = conditionsOf(scene);
  const light = topLight(conditions);
  const { max_depth_m } = scene;
  const redGone_m = redDownTo_m(light, underwater(conditions, NOMINAL).kd_per_m, 0.01);
  const end_m = Math.ceil(Math.max(BEYOND_DIVE * max_depth_m, BEYOND_RED * redGone_m, LEAST_M));
  const depths_m = Array.from({ length: STEPS + 1 }, (_, d) => (d * end_m) / STEPS);

  const { estimates } = propagate((nuisance) => {
    const { kd_per_m } = underwater(conditions, nuisance);
    const tenth_m = redDownTo_m(light, kd_per_m, 0.1);
    return {
      losses: bandLosses(light, kd_per_m, depths_m),
      deepest: bandLosses(light, kd_per_m, [max_depth_m]),
      tenth_m,
      hundredth_m: redDownTo_m(light, kd_per_m, 0.01, tenth_m),
    };
  }, causesOfFading(conditions));

  const { red, green, blue, eye } = estimates.deepest;
  return {
    depths_m,
    left_percent: percentsOf(estimates.losses),
    left_at_max_percent: {
      red: percentOf(itemAt(red, 0)),
      green: percentOf(itemAt(green, 0)),
      blue: percentOf(itemAt(blue, 0)),
      eye: percentOf(itemAt(eye, 0)),
    },
    red_to_tenth_depth_m: estimates.tenth_m,
    red_to_hundredth_depth_m: estimates.hundredth_m,
    min_depth_m: scene.min_depth_m,
    max_depth_m,
    has_daylight: conditions.daylight !== undefined,
    cautions: cautionsFor(scene),
  };
}

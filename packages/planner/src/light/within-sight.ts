/** Refuses what no camera could see: paths on which nothing is left of the light, and filters that pass none. */
import { pathAttenuation, type Spectrum, WAVELENGTHS_NM, waterFromKd } from "@sunfathom/optics";
import { valueAt } from "../lists/non-empty.js";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { requireClear } from "./clear-filters.js";
import type { Daylight } from "./daylight.js";
import type { DescribedWater } from "./water.js";

/** At this optical depth a part in 10^43 is left, in the clearest colour: far below any light there is. */
const DARK_AT_OPTICAL_DEPTH = 100;
/** Where nothing depends on daylight, losses are told to so many times that depth: before the numbers of a computer end. */
const WITHOUT_DAYLIGHT = 3;
/** Over 400 to 700 nm, which is what cameras and eyes see. */
function clearest(attenuation_per_m: Spectrum): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < attenuation_per_m.length; i++) {
    const nm = valueAt(WAVELENGTHS_NM, i);
    if (nm >= 400 && nm <= 700) least = Math.min(least, valueAt(attenuation_per_m, i));
  }
  return least;
}

function requireDaylightLeft({ max_depth_m }: Scene, deepest_m: number, is_daylit: boolean): void {
  if (max_depth_m <= deepest_m) return;
  const parameters = { depth_m: max_depth_m, max_depth_m: Number(deepest_m.toFixed(1)), is_daylit };
  throw new SceneProblem({ code: "no_daylight_left", parameters }, "max_depth_m");
}

/** @throws SceneProblem where losses of daylight, which a scene without any may ask for, are beyond a computer's numbers. */
export function requireLossesEnd(scene: Scene, kd_per_m: Spectrum): void {
  requireDaylightLeft(scene, (WITHOUT_DAYLIGHT * DARK_AT_OPTICAL_DEPTH) / clearest(kd_per_m), false);
}

/** @throws SceneProblem where depth, distance or a filter leaves no light at all. */
export function requireWithinSight(
  scene: Scene,
  daylight: Daylight | undefined,
  water: DescribedWater,
): void {
  const { kd_reference_per_m, scatteringScale, coastalShare } = water;
  const optics = waterFromKd(kd_reference_per_m, { scatteringScale, coastalShare });
  const reach = (attenuation: Spectrum): number => DARK_AT_OPTICAL_DEPTH / clearest(attenuation);
  const deepest_m = reach(optics.kd_reference_per_m);
  if (daylight) requireDaylightLeft(scene, deepest_m, true);
  const farthest_m = reach(pathAttenuation(optics));
  const toFar = (field: string, distance_m: number) => {
    if (distance_m <= farthest_m) return;
    const parameters = { distance_m, max_distance_m: Number(farthest_m.toFixed(2)) };
    throw new SceneProblem({ code: "no_sight", parameters }, field);
  };
  toFar("subject_distance_m", scene.subject_distance_m);
  for (const lamp of scene.lamps) toFar("lamps", lamp.distance_m);
  if (scene.wanted_lead_distance_m !== undefined)
    toFar("wanted_lead_distance_m", scene.wanted_lead_distance_m);
  const { filter_transmittance, kit = [] } = scene;
  const isMeasured = filter_transmittance || kit.some((item) => item.filter_transmittance);
  if (isMeasured) requireClear(scene);
}

import { add, integrateProduct, multiply, type Spectrum, Y_BAR } from "@sunfathom/optics";
import { sensorOf } from "../camera/sensor.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { Conditions } from "./conditions.js";
import { subjectDaylightAt } from "./daylight-at-depth.js";
import { lampLightAt, towardsCamera, type Underwater, underwater } from "./underwater.js";

/**
 * Of the light that arrives, a filter that lets less through than this is taken to let nothing through: far below any light
 * there is, and far above where numbers end, so that no state of the water leads there.
 */
const NOTHING_BELOW = 1e-60;

/**
 * @param place of the filter in the scene: a field, and the way within it
 * @throws SceneProblem where a filter lets nothing through that a camera sees, of what light the water leaves.
 */
export function requireSeenThrough(
  conditions: Conditions,
  filter: Spectrum,
  place: readonly [field: string, within: readonly string[]],
): void {
  const sensor = sensorOf(conditions.scene, NOMINAL);
  const [field, within] = place;
  const of = field === "kit" ? "kit" : "lens";
  if (!(integrateProduct(filter, sensor.green) > 0 && integrateProduct(filter, sensor.red) > 0)) {
    const parameters = { case: "filter_passes_none", filter: of } as const;
    throw new SceneProblem({ code: "no_light", parameters }, field, within);
  }
  const world = underwater(conditions, NOMINAL);
  const { min_depth_m, max_depth_m } = conditions.scene;
  for (const depth_m of [min_depth_m, max_depth_m]) {
    const light = arriving(world, depth_m);
    const through = multiply(light, filter);
    const isLeft = (seen: Spectrum) =>
      integrateProduct(through, seen) > NOTHING_BELOW * integrateProduct(light, seen);
    if (isLeft(sensor.green) && isLeft(Y_BAR)) continue;
    const parameters = { case: "filter_stops_what_is_left", filter: of, depth_m } as const;
    throw new SceneProblem({ code: "no_light", parameters }, field, within);
  }
}

/** Light of a white subject as it arrives at the lens, W m^-2 nm^-1. */
function arriving(world: Underwater, depth_m: number): Spectrum {
  return multiply(add(subjectDaylightAt(world, depth_m), lampLightAt(world)), towardsCamera(world));
}

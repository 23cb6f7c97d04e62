import { add, integrateProduct, meanSensor, multiply, type Spectrum, Y_BAR } from "@sunfathom/optics";
import { SceneProblem } from "../scene/scene-problem.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { Conditions } from "./conditions.js";
import { lensFilterOf } from "./lens-filter.js";
import { lampLightAt, towardsCamera, type Underwater, underwater, uprightDaylightAt } from "./underwater.js";

/**
 * Of the light that arrives, a filter that lets less through than this is taken to let nothing through: far below any light
 * there is, and far above where numbers end, so that no state of the water leads there.
 */
const NOTHING_BELOW = 1e-60;

/** @throws SceneProblem where there is no light to film by: neither daylight nor a lamp, or none that passes the lens filter. */
export function requireLight(conditions: Conditions): void {
  requireSource(conditions);
  if (conditions.scene.filter_transmittance === undefined) return;
  requireSeenThrough(conditions, lensFilterOf(conditions.scene, NOMINAL), "filter_transmittance");
}

/**
 * @param field that names the filter
 * @throws SceneProblem where a filter lets nothing through that a camera sees, of what light the water leaves.
 */
export function requireSeenThrough(conditions: Conditions, filter: Spectrum, field: string): void {
  const sensor = meanSensor();
  const named = field === "kit" ? "a filter of the kit" : "the filter on the lens";
  if (!(integrateProduct(filter, sensor.green) > 0 && integrateProduct(filter, sensor.red) > 0)) {
    throw new SceneProblem("no_light", `No light that a camera sees passes ${named}.`, [
      {
        field,
        message: "nothing from 400 to 720 nm, where cameras see, passes this filter",
        allowed: "a transmittance above 0 somewhere from 400 to 720 nm",
      },
    ]);
  }
  const world = underwater(conditions, NOMINAL);
  const { min_depth_m, max_depth_m } = conditions.scene;
  for (const depth_m of [min_depth_m, max_depth_m]) {
    const light = arriving(world, depth_m);
    const through = multiply(light, filter);
    const isLeft = (seen: Spectrum) =>
      integrateProduct(through, seen) > NOTHING_BELOW * integrateProduct(light, seen);
    if (isLeft(sensor.green) && isLeft(Y_BAR)) continue;
    throw new SceneProblem("no_light", `At ${depth_m} m no light passes ${named}.`, [
      {
        field,
        message: `this filter stops all the light that the water leaves at ${depth_m} m`,
        allowed: "a transmittance above 0 where this water is clear",
      },
    ]);
  }
}

/** Light of a white subject as it arrives at the lens, W m^-2 nm^-1. */
function arriving(world: Underwater, depth_m: number): Spectrum {
  return multiply(add(uprightDaylightAt(world, depth_m), lampLightAt(world)), towardsCamera(world));
}

function requireSource({ scene, daylight }: Conditions): void {
  if (daylight || scene.lamps.length > 0) return;
  throw new SceneProblem("no_light", "Without daylight and without lamps there is no light to film by.", [
    {
      field: "lamps",
      message: "no lamp is given and there is no daylight",
      allowed: "at least one lamp, or daylight",
    },
  ]);
}

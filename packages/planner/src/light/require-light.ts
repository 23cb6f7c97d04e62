import { integrateProduct, meanSensor } from "@sunfathom/optics";
import { SceneProblem } from "../scene/scene-problem.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { Conditions } from "./conditions.js";
import { lensFilterOf } from "./lens-filter.js";

/** @throws SceneProblem where there is no light to film by: neither daylight nor a lamp, or none that passes the lens filter. */
export function requireLight(conditions: Conditions): void {
  requireSource(conditions);
  if (conditions.scene.filter_transmittance === undefined) return;
  const sensor = meanSensor();
  const filter = lensFilterOf(conditions.scene, NOMINAL);
  if (integrateProduct(filter, sensor.green) > 0 && integrateProduct(filter, sensor.red) > 0) return;
  throw new SceneProblem("no_light", "No light that a camera sees passes the filter on the lens.", [
    {
      field: "filter_transmittance",
      message: "nothing from 400 to 720 nm, where cameras see, passes this filter",
      allowed: "a transmittance above 0 somewhere from 400 to 720 nm",
    },
  ]);
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

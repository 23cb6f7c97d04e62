import { SceneProblem } from "../scene/scene-problem.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { Conditions } from "./conditions.js";
import { lensFilterOf } from "./lens-filter.js";
import { requireSeenThrough } from "./seen-through.js";

/** @throws SceneProblem where there is no light to film by: neither daylight nor a lamp, or none that passes the lens filter. */
export function requireLight(conditions: Conditions): void {
  requireSource(conditions);
  if (conditions.scene.filter_transmittance === undefined) return;
  requireSeenThrough(conditions, lensFilterOf(conditions.scene, NOMINAL), ["filter_transmittance", []]);
}

function requireSource({ scene, daylight }: Conditions): void {
  if (daylight || scene.lamps.length > 0) return;
  throw new SceneProblem({ code: "no_light", parameters: { case: "no_source" } }, "lamps");
}

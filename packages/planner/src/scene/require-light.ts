import type { Scene } from "./scene.js";
import { SceneProblem } from "./scene-problem.js";

/** @throws SceneProblem where neither daylight nor a lamp is there to film by. */
export function requireLight(scene: Scene): void {
  if (scene.daylight_basis !== "none" || scene.lamps.length > 0) return;
  throw new SceneProblem("no_light", "Without daylight and without lamps there is no light to film by.", [
    {
      field: "lamps",
      message: "no lamp is given and daylight_basis is none",
      allowed: "at least one lamp, or daylight_basis sun",
    },
  ]);
}

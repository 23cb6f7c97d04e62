import { SceneProblem } from "../scene/scene-problem.js";
import type { Conditions } from "./conditions.js";

/** @throws SceneProblem where neither daylight nor a lamp is there to film by. */
export function requireLight({ scene, daylight }: Conditions): void {
  if (daylight || scene.lamps.length > 0) return;
  throw new SceneProblem("no_light", "Without daylight and without lamps there is no light to film by.", [
    {
      field: "lamps",
      message: "no lamp is given and there is no daylight",
      allowed: "at least one lamp, or daylight",
    },
  ]);
}

import {
  JERLOV_TYPES,
  jerlovKd,
  kdFromTable,
  type Spectrum,
  type WaterOptics,
  waterFromKd,
} from "@sunfathom/optics";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import type { Nuisance } from "../uncertainty/nuisance.js";

/** Diffuse attenuation of the scene's water under the reference sun, 1/m, and the sources that it rests on. */
export function kdOf(scene: Scene): { kd_per_m: Spectrum; sources: string[] } {
  if (scene.kd_samples) {
    const { kd_samples } = scene;
    const kd_per_m = kdFromTable(
      kd_samples.map((s) => s.wavelength_nm),
      kd_samples.map((s) => s.kd_per_m),
    );
    return { kd_per_m, sources: ["pope_fry_1997"] };
  }
  const type = JERLOV_TYPES.find((name) => name === scene.water_type);
  if (type === undefined) {
    throw new SceneProblem("water_missing", "The scene names no water that the model knows.", [
      { field: "water_type", message: "no known water", allowed: JERLOV_TYPES.join(", ") },
    ]);
  }
  return { kd_per_m: jerlovKd(type), sources: ["jerlov_1976", "pope_fry_1997"] };
}

export function waterOf(scene: Scene, nuisance: Nuisance): WaterOptics {
  return waterFromKd(kdOf(scene).kd_per_m, nuisance);
}

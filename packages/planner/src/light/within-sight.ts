/** Refuses what no camera could see: paths on which nothing is left of the light, and filters that pass none. */
import {
  integrateProduct,
  pathAttenuation,
  type Spectrum,
  WAVELENGTHS_NM,
  waterFromKd,
  Y_BAR,
} from "@sunfathom/optics";
import { valueAt } from "../lists/non-empty.js";
import type { Scene, TransmittanceSample } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import type { Daylight } from "./daylight.js";
import { measuredCurve } from "./measured-curve.js";
import type { DescribedWater } from "./water.js";

/** At this optical depth a part in 10^43 is left, in the clearest colour: far below any light there is. */
const DARK_AT_OPTICAL_DEPTH = 100;
/** Least luminous transmittance of a filter that lets something be seen: 23 stops. */
const OPAQUE_BELOW = 1e-7;

/** Over 400 to 700 nm, which is what cameras and eyes see. */
function clearest(attenuation_per_m: Spectrum): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < attenuation_per_m.length; i++) {
    const nm = valueAt(WAVELENGTHS_NM, i);
    if (nm >= 400 && nm <= 700) least = Math.min(least, valueAt(attenuation_per_m, i));
  }
  return least;
}

function refuse(code: string, field: string, message: string, allowed: string): never {
  throw new SceneProblem(code, message, [{ field, message, allowed }]);
}

/** @throws SceneProblem where depth, distance or a filter leaves no light at all. */
export function requireWithinSight(
  scene: Scene,
  daylight: Daylight | undefined,
  water: DescribedWater,
): void {
  const optics = waterFromKd(water.kd_reference_per_m, { scatteringScale: water.scatteringScale });
  const reach = (attenuation: Spectrum): number => DARK_AT_OPTICAL_DEPTH / clearest(attenuation);
  const deepest_m = reach(optics.kd_reference_per_m);
  if (daylight && scene.max_depth_m > deepest_m) {
    refuse(
      "no_daylight_left",
      "max_depth_m",
      `At ${scene.max_depth_m} m nothing is left of daylight in this water.`,
      `at most ${deepest_m.toFixed(1)} m in this water, or daylight_basis "none" to plan on lamps alone`,
    );
  }
  const farthest_m = reach(pathAttenuation(optics));
  const toFar = (field: string, distance_m: number) => {
    if (distance_m <= farthest_m) return;
    refuse(
      "no_sight",
      field,
      `No light crosses ${distance_m} m of this water.`,
      `at most ${farthest_m.toFixed(2)} m in this water`,
    );
  };
  toFar("subject_distance_m", scene.subject_distance_m);
  for (const lamp of scene.lamps) toFar("lamps", lamp.distance_m);
  requireClear(scene);
}

function requireClear({ filter_transmittance, kit }: Scene): void {
  const opaque = (curve: readonly TransmittanceSample[]): boolean => {
    const transmittance = measuredCurve(curve);
    const total = integrateProduct(
      transmittance.map(() => 1),
      Y_BAR,
    );
    return integrateProduct(transmittance, Y_BAR) / total < OPAQUE_BELOW;
  };
  const message = "This curve lets no visible light through.";
  const allowed = "transmittance above 0 somewhere from 380 to 780 nm";
  if (filter_transmittance && opaque(filter_transmittance)) {
    refuse("filter_opaque", "filter_transmittance", message, allowed);
  }
  if (kit?.some((item) => item.filter_transmittance && opaque(item.filter_transmittance))) {
    refuse("filter_opaque", "kit", message, allowed);
  }
}

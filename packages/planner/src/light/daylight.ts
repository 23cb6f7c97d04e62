import { scale, surfaceDaylight, throughSurface, type UnderwaterDaylight } from "@sunfathom/optics";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import type { Nuisance } from "../uncertainty/nuisance.js";

/** Lowest sun for which the clear-sky model holds. */
export const LOWEST_SUN_DEG = 10;

export interface Daylight {
  below: UnderwaterDaylight;
  /** Downwelling light just above the surface, W m^-2 nm^-1. */
  above: Float64Array;
}

/** Daylight just above and just below the surface; undefined without daylight. */
export function daylightOf(scene: Scene, nuisance: Nuisance): Daylight | undefined {
  const elevation = scene.sun_elevation_deg;
  if (scene.daylight_basis === "none" || elevation === undefined) return undefined;
  if (elevation < LOWEST_SUN_DEG) {
    throw new SceneProblem(
      "sun_too_low",
      "With the sun this low the daylight model does not hold: at dusk and dawn the light is weak, blue and quick to change. Plan on lamps, or ask for a higher sun.",
      [
        {
          field: "sun_elevation_deg",
          message: `${elevation} degrees is below the model's domain`,
          allowed: `${LOWEST_SUN_DEG} to 90, or daylight_basis "none" to plan on lamps alone`,
        },
      ],
    );
  }
  const surface = surfaceDaylight(elevation, scene.cloud_oktas);
  const direct = scale(surface.direct, nuisance.daylightScale);
  const diffuse = scale(surface.diffuse, nuisance.daylightScale);
  return {
    below: throughSurface({ direct, diffuse }, elevation, scene.wind_speed_m_s),
    above: direct.map((d, i) => d + diffuse[i]),
  };
}

import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { sunAtPlace } from "./sun-at-place.js";

/** Lowest sun for which the clear-sky model holds. */
const LOWEST_SUN_DEG = 10;
/** Below this the sky gives less than a few lux: night, for a camera under water. End of civil twilight. */
const NIGHT_BELOW_DEG = -6;

export interface Sun {
  elevation_deg: number;
  /** From north through east; known only from a place and a time. */
  azimuth_deg?: number;
  /** The instant in UTC, where a place and a time were given. */
  instant?: Date;
  /** True where the clock showed the local time twice and its first occurrence was taken. */
  repeated?: boolean;
}

const tooLow = (elevation_deg: number, field: string): SceneProblem =>
  new SceneProblem(
    {
      code: "sun_too_low",
      parameters: { elevation_deg: Number(elevation_deg.toFixed(1)), min_elevation_deg: LOWEST_SUN_DEG },
    },
    field,
  );

/**
 * The sun of a scene; undefined without daylight, be it said or be it night at the place and time given.
 * @throws SceneProblem from the end of civil twilight up to 10 degrees, where the daylight model does not hold, and for a place
 * or time that does not exist.
 */
export function sunOf(scene: Scene): Sun | undefined {
  if (scene.daylight_basis === "none") return undefined;
  if (scene.daylight_basis === "sun") {
    const elevation_deg = scene.sun_elevation_deg ?? 0;
    if (elevation_deg < LOWEST_SUN_DEG) throw tooLow(elevation_deg, "sun_elevation_deg");
    return { elevation_deg };
  }
  const { field, ...sun } = sunAtPlace(scene);
  if (sun.elevation_deg < NIGHT_BELOW_DEG) return undefined;
  if (sun.elevation_deg < LOWEST_SUN_DEG) throw tooLow(sun.elevation_deg, field);
  return sun;
}

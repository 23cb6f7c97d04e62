import { localTimeToInstant, OpticsDomainError, sunPosition } from "@sunfathom/optics";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";

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

type Where = Pick<Scene, "latitude_deg" | "longitude_deg" | "time" | "local_time" | "time_zone">;

function instantOf({ time, local_time, time_zone }: Where): {
  instant: Date;
  repeated: boolean;
  field: string;
} {
  if (time !== undefined) return { instant: new Date(time), repeated: false, field: "time" };
  const { instant, repeated_at } = localTimeToInstant(local_time ?? "", time_zone ?? "");
  return { instant, repeated: repeated_at !== undefined, field: "local_time" };
}

/** Fields that a refusal of optics concerns. */
const FIELD_OF_CODE: Record<string, string> = {
  latitude_out_of_range: "latitude_deg",
  longitude_out_of_range: "longitude_deg",
  time_zone_unknown: "time_zone",
};

function sunAtPlace(scene: Where): Sun & { field: string } {
  let field = scene.time === undefined ? "local_time" : "time";
  try {
    const { instant, repeated } = instantOf(scene);
    const place = { latitude_deg: scene.latitude_deg ?? 0, longitude_deg: scene.longitude_deg ?? 0 };
    const { elevation_refracted_deg, azimuth_deg } = sunPosition(place, instant);
    return { elevation_deg: elevation_refracted_deg, azimuth_deg, instant, repeated, field };
  } catch (error) {
    if (!(error instanceof OpticsDomainError)) throw error;
    field = FIELD_OF_CODE[error.code] ?? field;
    throw new SceneProblem(error.refusal, field);
  }
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

import { localTimeToInstant, OpticsDomainError, sunPosition } from "@sunfathom/optics";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";

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

/**
 * The sun of a place and a time, and the field that says the time.
 * @throws SceneProblem for a place or time that does not exist
 */
export function sunAtPlace(scene: Where): {
  elevation_deg: number;
  azimuth_deg: number;
  instant: Date;
  repeated: boolean;
  field: string;
} {
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

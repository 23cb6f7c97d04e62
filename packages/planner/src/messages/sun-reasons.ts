import type { Conditions } from "../light/conditions.js";
import type { Reason } from "../result/common.js";
import { lightReason } from "./light-reason.js";

/** What a place and a time make of the sun; empty where its height was given. */
export function sunReasons({ scene, sun }: Conditions): Reason[] {
  if (scene.daylight_basis !== "place_time") return [];
  if (!sun?.instant) return [lightReason("night_there", "computed")];
  const utc = `${sun.instant.toISOString().slice(0, 16).replace("T", " ")} UTC`;
  const { elevation_deg, azimuth_deg = 0 } = sun;
  return [
    lightReason("sun_stands", "computed", { elevation_deg, azimuth_deg, utc }),
    ...(sun.repeated ? [lightReason("clock_shows_twice", "computed", { utc })] : []),
  ];
}

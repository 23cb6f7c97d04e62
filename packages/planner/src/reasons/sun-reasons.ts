import type { Reason } from "../codes/coded.js";
import type { LightReasons } from "../codes/light.js";
import type { Conditions } from "../light/conditions.js";
import { lightReason } from "./light-reason.js";

/** What a place and a time make of the sun; empty where its height was given. */
export function sunReasons({ scene, sun }: Conditions): Reason<LightReasons>[] {
  if (scene.daylight_basis !== "place_time") return [];
  if (!sun?.instant) return [lightReason("night_there", "computed")];
  const time = sun.instant.toISOString();
  const { elevation_deg, azimuth_deg = 0 } = sun;
  return [
    lightReason("sun_stands", "computed", { elevation_deg, azimuth_deg, time }),
    ...(sun.repeated ? [lightReason("clock_shows_twice", "computed", { time })] : []),
  ];
}

import { illuminance_lx } from "@sunfathom/optics";
import type { Reason } from "../codes/coded.js";
import type { LightReasons } from "../codes/light.js";
import type { Conditions } from "../light/conditions.js";
import { type Daylight, daylightUnder } from "../light/daylight.js";
import { isCovered } from "../light/is-covered.js";
import type { Scene } from "../scene/scene.js";
import { lightReason } from "./light-reason.js";

/** What a place and a time make of the sun, and what lies over the diver of its light. */
export const sunReasons = (conditions: Conditions): Reason<LightReasons>[] => [
  ...placeReasons(conditions),
  ...overheadReasons(conditions),
];

function overheadReasons({ scene, sun, daylight }: Conditions): Reason<LightReasons>[] {
  const { overhead, ...open } = scene;
  // What comes in under each is from memory, unless the scene says it.
  const isTold = (overhead === "ice" ? scene.ice_thickness_m : scene.daylight_open_share) !== undefined;
  if (!overhead || !isCovered(scene) || !sun || !daylight) return [];
  const lux = (light: Daylight) => illuminance_lx(light.below.downwelling);
  const stops = Math.log2(lux(daylightUnder(sun, open)) / lux(daylight));
  return [lightReason("overhead_cuts", isTold ? "computed" : "judgement", { overhead, stops })];
}

/** Empty where the height of the sun was given. */
function placeReasons({ scene, sun }: Conditions): Reason<LightReasons>[] {
  if (scene.daylight_basis !== "place_time") return [];
  if (!sun?.instant) return [lightReason("night_there", "computed")];
  const time = sun.instant.toISOString();
  const { elevation_deg, azimuth_deg = 0 } = sun;
  return [
    lightReason("sun_stands", "computed", { elevation_deg, azimuth_deg, time, ...localOf(scene) }),
    ...(sun.repeated ? [lightReason("clock_shows_twice", "computed", { time })] : []),
  ];
}

/** The clock there, where it was given: as such, or as the offset of an instant, which Z is not. */
function localOf({ time, local_time = time }: Scene): { local?: { time: string } } {
  return local_time === undefined || /z$/i.test(local_time)
    ? {}
    : { local: { time: local_time.slice(0, 16) } };
}

import { sceneDefaults } from "./defaults.js";
import { placeTimeNames } from "./place-time-names.js";
import type { Scene } from "./scene.js";

/** Where daylight comes from: as said, else from place and time where either is given, else from the default. */
export function impliedDaylightBasis(
  scene: Pick<Scene, "daylight_basis" | (typeof placeTimeNames)[number]>,
): "none" | "sun" | "place_time" {
  if (scene.daylight_basis !== undefined) return scene.daylight_basis;
  return placeTimeNames.some((name) => scene[name] !== undefined)
    ? "place_time"
    : sceneDefaults.daylight_basis;
}

import { sceneDefaults } from "./defaults.js";
import { placeTimeNames } from "./place-time-names.js";
import type { Scene } from "./scene.js";

/** Where daylight comes from: as said, else from place and time where either is given, else from the default: none in a cave. */
export function impliedDaylightBasis(
  scene: Pick<Scene, "daylight_basis" | "overhead" | (typeof placeTimeNames)[number]>,
): "none" | "sun" | "place_time" {
  if (scene.daylight_basis !== undefined) return scene.daylight_basis;
  if (placeTimeNames.some((name) => scene[name] !== undefined)) return "place_time";
  return scene.overhead === "cave" ? "none" : sceneDefaults.daylight_basis;
}

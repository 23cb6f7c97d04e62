/** The picture's diagonal on the sensor: as given, or what it may be where it is not. */
import type { Estimate } from "../result/common.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";

/** Diagonals up to this are those of action cameras and telephones (1/1.3-inch type: 12.3 mm, from memory). */
export const SMALL_FORMAT_mm = 12.5;

/** 24 x 36 mm, and down to Four Thirds (17.3 x 13 mm): cameras whose lenses are changed. */
const SYSTEM_CAMERA: Estimate = { low: 21.6, likely: Math.hypot(36, 24), high: Math.hypot(36, 24) };
/** The 1-inch type (13.2 x 8.8 mm), from the 1/2.3-inch type up to APS-C: cameras whose lens stays on. From memory. */
const FIXED_LENS: Estimate = { low: 7.7, likely: Math.hypot(13.2, 8.8), high: 28.4 };
/** The 1/2.3-inch type, from 1/3-inch to 1/1.9-inch: cameras that are watertight themselves. From memory. */
const ACTION_CAMERA: Estimate = { low: 6, likely: 7.7, high: 9.6 };

export function formatAssumed({ port_kind, lens_interchangeable, holder }: FilterMountingScene): Estimate {
  if (port_kind === "none" || holder === "action_camera") return ACTION_CAMERA;
  return lens_interchangeable ? SYSTEM_CAMERA : FIXED_LENS;
}

import { type Floor, floorReflectance, onGrid } from "@sunfathom/optics";
import type { Bottom } from "../scene/scene.js";

/** The sea floor of a scene; undefined in deep water. */
export function seaFloorOf({ bottom, bottom_reflectance, bottom_depth_m }: Bottom): Floor | undefined {
  if (bottom_depth_m === undefined) return undefined;
  if (bottom_reflectance) {
    const wavelengths_nm = bottom_reflectance.map((s) => s.wavelength_nm);
    const values = bottom_reflectance.map((s) => s.reflectance);
    return { reflectance: onGrid(wavelengths_nm, values), depth_m: bottom_depth_m };
  }
  if (bottom === undefined || bottom === "none") return undefined;
  return { reflectance: floorReflectance(bottom), depth_m: bottom_depth_m };
}

/** The same floor, paler or darker, but sending back no more than falls on it. */
export function scaledFloor({ reflectance, depth_m }: Floor, factor: number): Floor {
  return { reflectance: reflectance.map((r) => Math.min(1, r * factor)), depth_m };
}

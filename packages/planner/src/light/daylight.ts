import {
  add,
  daylightFromTable,
  type Spectrum,
  scale,
  throughSurface,
  type UnderwaterDaylight,
} from "@sunfathom/optics";
import type { Scene } from "../scene/scene.js";
import { isCovered } from "./is-covered.js";
import { underOverhead } from "./overhead.js";
import type { Sun } from "./sun.js";

/** Daylight of a scene at the surface. */
export interface Daylight {
  /** Downwelling light just above the surface, W m^-2 nm^-1. */
  above: Spectrum;
  below: UnderwaterDaylight;
}

export function daylightUnder(sun: Sun, scene: Scene): Daylight {
  const surface = daylightFromTable(sun.elevation_deg, scene.cloud_oktas);
  const open = throughSurface(surface, sun.elevation_deg, scene.wind_speed_m_s);
  return {
    above: add(surface.direct, surface.diffuse),
    below: isCovered(scene) ? underOverhead(open, scene) : open,
  };
}

/**
 * The same daylight, brighter or darker.
 * @param underCover and what comes through what lies over the diver
 */
export function scaledDaylight(daylight: Daylight, factor: number, underCover: number): Daylight {
  if (factor === 1 && underCover === 1) return daylight;
  const { above, below } = daylight;
  return {
    above: scale(above, factor),
    below: { ...below, downwelling: scale(below.downwelling, factor * underCover) },
  };
}

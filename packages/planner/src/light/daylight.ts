import {
  add,
  type Spectrum,
  scale,
  surfaceDaylight,
  throughSurface,
  type UnderwaterDaylight,
} from "@sunfathom/optics";
import type { Scene } from "../scene/scene.js";
import type { Sun } from "./sun.js";

/** Daylight of a scene at the surface. */
export interface Daylight {
  /** Downwelling light just above the surface, W m^-2 nm^-1. */
  above: Spectrum;
  below: UnderwaterDaylight;
}

export function daylightUnder(sun: Sun, scene: Scene): Daylight {
  const surface = surfaceDaylight(sun.elevation_deg, scene.cloud_oktas);
  return {
    above: add(surface.direct, surface.diffuse),
    below: throughSurface(surface, sun.elevation_deg, scene.wind_speed_m_s),
  };
}

/** The same daylight, brighter or darker. */
export const scaledDaylight = ({ above, below }: Daylight, factor: number): Daylight => ({
  above: scale(above, factor),
  below: { ...below, downwelling: scale(below.downwelling, factor) },
});

/**
 * What a port between water and the air inside a housing does to radiance, near the axis. Exact for a clear window (Snell,
 * Fresnel at normal incidence, and radiance over n^2 kept along a ray). Flat or dome alike: the flat one spreads the picture n
 * times wider, the dome shows the water a lens opening n times smaller.
 */
import { WATER_INDEX } from "../surface/snell-fresnel.js";

/** Acrylic 1.49, crown glass 1.52: from memory of handbooks. */
const WINDOW_INDEX = 1.5;

const passed = (from: number, to: number): number => 1 - ((from - to) / (from + to)) ** 2;

/**
 * Radiance in the air behind an uncoated window over radiance in the water before it, 0 to 1: (1 - R)(1 - R') / n^2. Its inverse,
 * against the same window in air, is the immersion factor of in-water radiometers (Austin 1976; Ocean Optics Protocols).
 */
export const portTransmittance = (windowIndex = WINDOW_INDEX, waterIndex = WATER_INDEX): number =>
  (passed(waterIndex, windowIndex) * passed(windowIndex, 1)) / waterIndex ** 2;

import { WATER_INDEX } from "../surface/snell-fresnel.js";

const RADIAN = Math.PI / 180;

/** Full beam angle in water of a lamp whose angle was measured in air, behind a flat port: sin(w/2) = sin(a/2)/n. Exact (Snell). */
export function beamAngleInWater_deg(beamAngleInAir_deg: number): number {
  return (2 * Math.asin(Math.sin((beamAngleInAir_deg / 2) * RADIAN) / WATER_INDEX)) / RADIAN;
}

/**
 * Luminous intensity of a lamp that fills a cone evenly, cd: flux / (2 pi (1 - cos(angle/2))). Real beams peak 1.5 to 3 times
 * higher in the middle and are weaker at the edge (from memory).
 */
export function coneIntensity_cd(flux_lm: number, beamAngle_deg: number): number {
  return flux_lm / (2 * Math.PI * (1 - Math.cos((beamAngle_deg / 2) * RADIAN)));
}

/** Refraction and reflection at a flat surface between air and water. Exact (Snell, Fresnel). Angles in degrees from the normal. */

/** Refractive index of sea water against air, mean over the visible (Quan & Fry 1995 gives 1.337 to 1.350 for 35 psu). */
export const WATER_INDEX = 1.34;

const RADIAN = Math.PI / 180;

/** Angle in water of light that falls in at `angleInAir_deg` (0 to 90). */
export function refractedAngle_deg(angleInAir_deg: number, index = WATER_INDEX): number {
  return Math.asin(Math.sin(angleInAir_deg * RADIAN) / index) / RADIAN;
}

/** Reflectance of unpolarised light, 0 to 1. */
export function fresnelReflectance(angleInAir_deg: number, index = WATER_INDEX): number {
  if (angleInAir_deg < 1e-4) return ((index - 1) / (index + 1)) ** 2;
  const air = angleInAir_deg * RADIAN;
  const water = refractedAngle_deg(angleInAir_deg, index) * RADIAN;
  const perpendicular = Math.sin(air - water) / Math.sin(air + water);
  const parallel = Math.tan(air - water) / Math.tan(air + water);
  return (perpendicular * perpendicular + parallel * parallel) / 2;
}

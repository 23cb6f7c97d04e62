/**
 * A dome port as one thin spherical surface between water and air, near the axis: n/d + (n - 1)/R = 1/i, the formula of a
 * single refracting surface in any textbook of optics (for example Hecht, Optics, chapter 5). All distances count from the
 * dome's vertex into the water; the image is virtual, upright and in front of the dome. Any one length unit.
 */
import { WATER_INDEX } from "../surface/snell-fresnel.js";

/** Where a thing at `distance` from the vertex (above 0, or Infinity) appears: at most R / (n - 1), which is 3 R for n = 4/3. */
export const domeImageDistance = (radius: number, distance: number, index = WATER_INDEX): number =>
  1 / (index / distance + (index - 1) / radius);

/** Distance of the thing that appears at `imageDistance` (above 0); Infinity where nothing appears that far. */
export function domeObjectDistance(radius: number, imageDistance: number, index = WATER_INDEX): number {
  const vergence = 1 / imageDistance - (index - 1) / radius;
  return vergence <= 0 ? Number.POSITIVE_INFINITY : index / vergence;
}

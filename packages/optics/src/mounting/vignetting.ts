/**
 * Darkening of the picture's edge by round stops in front of a lens: filters and rings. Exact geometry of a round entrance
 * pupil of fixed place and size: seen along a slanted beam, each stop is a circle shifted against the pupil. The lens's own
 * falloff is not counted, nor that the pupil of a wide lens moves and tilts with the angle: carry a doubt about the distance.
 *
 * Lengths in mm; angles in degrees from the axis, in air at the lens, 0 to below 90.
 */
import { refractedAngle_deg } from "../surface/snell-fresnel.js";
import { discShareInside } from "./circle-overlap.js";

/** A round opening on the way to the entrance pupil; the pupil's distance is split where a flat port parts air from water. */
export interface RoundStop {
  clear_radius_mm: number;
  in_air_mm: number;
  /** Zero for what sits inside the housing. */
  in_water_mm: number;
}

const RADIAN = Math.PI / 180;

/** How far the stop's circle is shifted against the pupil for a beam at this angle: s tan w, air and water each with its own. */
export function beamShift_mm({ in_air_mm, in_water_mm }: RoundStop, half_deg: number): number {
  const inWater = in_water_mm === 0 ? 0 : in_water_mm * Math.tan(refractedAngle_deg(half_deg) * RADIAN);
  return in_air_mm * Math.tan(half_deg * RADIAN) + inWater;
}

/**
 * Share of the pupil's light that passes the stops, 0 to 1: that of the stop which lets least through, which is exact where one
 * stop limits and otherwise the upper bound.
 */
export function lightThroughStops(
  stops: readonly RoundStop[],
  pupilRadius_mm: number,
  half_deg: number,
): number {
  return stops.reduce(
    (least, stop) =>
      Math.min(least, discShareInside(pupilRadius_mm, stop.clear_radius_mm, beamShift_mm(stop, half_deg))),
    1,
  );
}

/** Clear radius that a stop at this place needs to take nothing from a beam at this angle: p + s tan w. */
export const clearRadiusNeeded_mm = (
  place: Omit<RoundStop, "clear_radius_mm">,
  pupilRadius_mm: number,
  half_deg: number,
): number => pupilRadius_mm + beamShift_mm({ ...place, clear_radius_mm: 0 }, half_deg);

/** Largest angle to which no stop takes anything: r >= p + s tan w. Zero where a stop is smaller than the pupil. */
export function clearHalfField_deg(stops: readonly RoundStop[], pupilRadius_mm: number): number {
  const clearAt = (half_deg: number): boolean =>
    stops.every((stop) => stop.clear_radius_mm >= pupilRadius_mm + beamShift_mm(stop, half_deg));
  let clear = 0;
  let dark = 90;
  // 50 halvings of 90 degrees end below the last digit of a double.
  for (let i = 0; i < 50; i++) {
    const middle = (clear + dark) / 2;
    if (clearAt(middle)) clear = middle;
    else dark = middle;
  }
  return clearAt(0) ? clear : 0;
}

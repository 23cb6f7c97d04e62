/** What stands on the dials of cameras, in thirds of a stop: common practice, no published source. */
export const ISO_DIAL = [
  100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200, 4000, 5000, 6400,
  8000, 10000, 12800,
] as const;

/** How far a value as engraved may lie from the exact series, in stops. */
const ENGRAVED_WITHIN_STOPS = 0.04;

/** To a thousandth, so that of two that are as near the lower one comes first everywhere. */
const apart_stops = (a: number, b: number): number => Math.round(1000 * Math.abs(Math.log2(a / b))) / 1000;

/** A neighbour that lies no farther than this is as good: less than a dial can set. */
const NEIGHBOUR_WITHIN_STOPS = 0.2;

/**
 * The values of a dial on either side of one, nearest first; a single one where it stands on the dial, or the other lies too far.
 * @returns undefined where the value lies beyond the dial
 */
export function onDial(
  dial: readonly number[],
  value: number,
): readonly [nearest: number, other?: number] | undefined {
  const [nearest, next] = [...dial].sort((a, b) => apart_stops(a, value) - apart_stops(b, value));
  if (nearest === undefined) return undefined;
  if (apart_stops(nearest, value) <= ENGRAVED_WITHIN_STOPS) return [nearest];
  const between = next !== undefined && nearest < value !== next < value;
  if (!between) return undefined;
  return apart_stops(next, value) <= NEIGHBOUR_WITHIN_STOPS ? [nearest, next] : [nearest];
}

import { type Spectrum, spectrumFrom } from "./grid.js";

/**
 * Linear interpolation in a table of rising abscissae. Outside the table the end value holds: callers whose table ends
 * inside the grid choose what continues it.
 */
export function interpolate(x: readonly number[], y: readonly number[], at: number): number {
  const last = x.length - 1;
  if (at <= x[0]) return y[0];
  if (at >= x[last]) return y[last];
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle] <= at) low = middle;
    else high = middle;
  }
  return y[low] + ((y[high] - y[low]) * (at - x[low])) / (x[high] - x[low]);
}

/** A table brought onto the grid by linear interpolation; `outside` replaces what lies beyond its ends (default: the end values). */
export function onGrid(
  wavelengthsNm: readonly number[],
  values: readonly number[],
  outside?: number,
): Spectrum {
  const first = wavelengthsNm[0];
  const last = wavelengthsNm[wavelengthsNm.length - 1];
  return spectrumFrom((nm) =>
    outside !== undefined && (nm < first || nm > last) ? outside : interpolate(wavelengthsNm, values, nm),
  );
}

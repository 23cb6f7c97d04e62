/**
 * How much a series grows from its first third to its end, by the median of the slopes between all pairs of readings
 * (Theil 1950, Sen 1968: a few readings far off do not turn it). The first third is left out: there, code is compiled
 * and caches fill.
 * @param readings taken at even distances
 */
export function growthOf(readings: readonly number[]): number {
  const settled = readings.slice(Math.floor(readings.length / 3));
  const slopes = settled.flatMap((first, at) =>
    settled.slice(at + 1).map((later, distance) => (later - first) / (distance + 1)),
  );
  return medianOf(slopes) * (settled.length - 1);
}

export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return ((sorted[Math.ceil(middle) - 1] ?? 0) + (sorted[Math.floor(middle)] ?? 0)) / 2;
}

/** The least of each few readings in a row: of a heap, about what is alive between two collections of garbage. */
export function floorsOf(readings: readonly number[], few: number): number[] {
  return Array.from({ length: Math.floor(readings.length / few) }, (_, nth) =>
    Math.min(...readings.slice(nth * few, (nth + 1) * few)),
  );
}

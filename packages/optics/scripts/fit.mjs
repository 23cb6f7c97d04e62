/** Root mean square. */
export const rms = (values) => Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);

/** Coordinate search: steps of each constant in turn, halved until they no longer matter. */
export function fitted(start, names, misses) {
  let best = { ...start };
  let least = rms(misses(best));
  for (let step = 0.3; step > 0.004; ) {
    let moved = false;
    for (const name of names) {
      for (const factor of [1 + step, 1 / (1 + step)]) {
        const tried = { ...best, [name]: best[name] * factor };
        const value = rms(misses(tried));
        if (value < least - 1e-7) {
          best = tried;
          least = value;
          moved = true;
        }
      }
    }
    if (!moved) step /= 2;
  }
  return best;
}

/** Depths as precise as a hand under water: half metres above 5 m, whole metres below. */

const FINE_ABOVE_M = 5;
const FINE_M = 0.5;
const COARSE_M = 1;
const EXACT = 1e-9;

interface Range {
  min_depth_m: number;
  max_depth_m: number;
}

/** The nearest such depth that is no deeper. */
function above(depth_m: number): number {
  const step = depth_m < FINE_ABOVE_M - EXACT ? FINE_M : COARSE_M;
  return Math.max(FINE_M, Math.floor(depth_m / step + EXACT) * step);
}

/** The nearest such depth that is no shallower. */
function below(depth_m: number): number {
  const step = depth_m <= FINE_ABOVE_M + EXACT ? FINE_M : COARSE_M;
  return Math.ceil(depth_m / step - EXACT) * step;
}

/**
 * A depth for a step of a plan, nearest to `depth_m` within the range. A range that holds none is taken at the one above it: nobody is
 * sent deeper than asked for.
 */
export function handDepth(depth_m: number, { min_depth_m, max_depth_m }: Range): number {
  const [up, down] = [above(depth_m), below(depth_m)];
  const fits = [up, down].filter((d) => d >= min_depth_m - EXACT && d <= max_depth_m + EXACT);
  const [first, second] = fits;
  if (first === undefined) return above(min_depth_m);
  return second === undefined || depth_m - first <= second - depth_m ? first : second;
}

/** Those of a stretch, both ends included, in the order from one to the other. */
export function handDepths(from_m: number, to_m: number): number[] {
  const [least, most] = [Math.min(from_m, to_m), Math.max(from_m, to_m)];
  const depths: number[] = [];
  for (let at = below(least); at <= most + EXACT; at = below(at + 2 * EXACT)) depths.push(at);
  return from_m <= to_m ? depths : depths.reverse();
}

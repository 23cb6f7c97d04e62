/**
 * A smooth function of one number, from a table: Lagrange's cubic through the four nearest of `intervals + 1` nodes. The table is
 * made when it is first asked.
 * @param from least argument that will be asked for
 * @param to greatest; beyond both the outermost cubic goes on
 * @returns the function; how near it is, is for the caller to test
 */
export function tabulated(
  f: (x: number) => number,
  from: number,
  to: number,
  intervals: number,
): (x: number) => number {
  const step = (to - from) / intervals;
  let nodes: Float64Array | undefined;
  return (x) => {
    nodes ??= Float64Array.from({ length: intervals + 1 }, (_, i) => f(from + i * step));
    const at = (x - from) / step;
    const i = Math.min(intervals - 2, Math.max(1, Math.floor(at)));
    const t = at - i;
    const outer = (t * (1 - t)) / 6;
    return (
      (1 - t) * (1 + t) * (1 - t / 2) * nodes[i] -
      outer * (2 - t) * nodes[i - 1] +
      (t * (1 + t) * (2 - t) * nodes[i + 1]) / 2 -
      outer * (1 + t) * nodes[i + 2]
    );
  };
}

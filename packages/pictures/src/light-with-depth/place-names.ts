import type { Light } from "@sunfathom/planner";
import { widthOf } from "../text/measure.js";

type Point = readonly [x: number, y: number];

interface Curve {
  light: Light;
  name: string;
  /** Evenly spaced in y, from top to bottom. */
  points: readonly Point[];
}

interface Placed {
  light: Light;
  name: string;
  /** Left end and baseline of the text. */
  x: number;
  y: number;
}

/** Where a curve meets a height; undefined above and below it. */
function xAt(points: readonly Point[], y: number): number | undefined {
  const after = points.findIndex(([, at]) => at >= y);
  const [low, high] = [points[after - 1], points[after]];
  if (low === undefined || high === undefined) return undefined;
  const share = (y - low[1]) / (high[1] - low[1]);
  return low[0] + share * (high[0] - low[0]);
}

/** Names of curves, each to the right of its own where no other curve or name is; without a place, the key alone names it. */
export function placed(
  curves: readonly Curve[],
  { size, right, bottom }: { size: number; right: number; bottom: number },
): Placed[] {
  const found: (Placed & { width: number })[] = [];
  for (const { light, name, points } of curves) {
    const width = widthOf(name, size, "semibold");
    const free = points
      .map(([, y]) => y)
      .filter((y) => y > (points[0]?.[1] ?? 0) + 1.2 * size && y < bottom - 0.6 * size)
      .map((y) => {
        const rows = [y - 0.9 * size, y - 0.4 * size, y + 0.3 * size];
        const own = Math.max(...rows.map((row) => xAt(points, row) ?? 0));
        const x = own + 0.5 * size;
        const room = (other: Curve): number =>
          Math.min(
            ...rows.map((row) => {
              const at = xAt(other.points, row) ?? x;
              return Math.max(x - at, at - (x + width));
            }),
          );
        const toCurves = Math.min(
          ...curves.filter((other) => other.light !== light).map(room),
          right - (x + width),
        );
        const meets = found.some(
          (other) =>
            Math.abs(other.y - y) < 1.4 * size &&
            x < other.x + other.width + size / 2 &&
            other.x < x + width + size / 2,
        );
        return { light, name, x, y, width, room: meets ? -1 : toCurves };
      })
      .sort((a, b) => b.room - a.room)[0];
    if (free !== undefined && free.room > 0.3 * size) found.push(free);
  }
  return found.map(({ light, name, x, y }) => ({ light, name, x, y }));
}

import { fitGrade, type Grade, graded } from "../../camera/grade.js";
import type { Finished, Seen } from "./seen.js";
import { visibility } from "./visibility.js";

/** One 3 x 3 matrix with a black level, fitted with the noise in view to the chart as it was filmed. */
export const matchedGrade = (seen: readonly Seen[]): Grade =>
  fitGrade(
    seen.map(({ from, wantedXyz, variance, weight }) => ({
      from,
      to: wantedXyz,
      variance,
      weight: weight * visibility(wantedXyz[1]),
    })),
  );

/** A chart-profiled grade. */
export function matched(seen: readonly Seen[]): Finished {
  const grade = matchedGrade(seen);
  return (red, green, blue) => graded(grade, [red, green, blue]);
}

import { fitGrade, graded } from "../../camera/grade.js";
import type { Finished, Seen } from "./seen.js";
import { visibility } from "./visibility.js";

/** A chart-profiled grade: one 3 x 3 matrix with a black level, fitted with the noise in view to the chart as it was filmed. */
export function matched(seen: readonly Seen[]): Finished {
  const grade = fitGrade(
    seen.map(({ from, wantedXyz, variance, weight }) => ({
      from,
      to: wantedXyz,
      variance,
      weight: weight * visibility(wantedXyz[1]),
    })),
  );
  return (red, green, blue) => graded(grade, [red, green, blue]);
}

/** Whether anything of red is red at a depth, behind the filter that makes the most of what there is. */
import type { Conditions } from "../light/conditions.js";
import { itemAt, mapEach, type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { finishOf, type Judged, judge, leastErrorAt } from "./merits.js";

/** Where less than this of the red channel's signal is red light, nothing of red is red. */
const LEAST_RED_SHARE = 0.01;

const hasRedAt = ({ merits }: Judged, d: number): boolean =>
  itemAt(merits, d).red_above_600_nm_share >= LEAST_RED_SHARE;

/**
 * Depth by depth, whether nothing of red is red behind the filter from which a fitted grade gets most. Asked of that one alone: a
 * filter must not win by being just dense enough to pass. A camera whose balance is at its limit leaves the less the denser the
 * filter, red or no red, so another finish asks the grade where filters differ, and nowhere else.
 * @param judged every candidate; the first is no filter
 */
export function whereRedIsGone(
  conditions: Conditions,
  depths: Readonly<NonEmpty<number>>,
  [without, first, ...others]: Readonly<NonEmpty<Judged>>,
): readonly boolean[] {
  if (first === undefined) return depths.map(() => false);
  const filters = nonEmpty([first, ...others], "filter");
  if (finishOf(conditions.scene) === "matched")
    return depths.map((_, d) => !hasRedAt(leastErrorAt(filters, d), d));
  const differs = depths.map(
    (_, d) =>
      filters.some((filter) => hasRedAt(filter, d)) && !filters.every((filter) => hasRedAt(filter, d)),
  );
  const [doubtful, ...more] = depths.filter((_, d) => differs[d]);
  if (doubtful === undefined) return depths.map((_, d) => !hasRedAt(first, d));
  const graded: Conditions = { ...conditions, scene: { ...conditions.scene, finish: "matched" } };
  const there: NonEmpty<number> = [doubtful, ...more];
  const all = mapEach([without, first, ...others], ({ candidate }) => candidate);
  const gone = whereRedIsGone(graded, there, judge(graded, NOMINAL, there, all));
  let place = 0;
  return depths.map((_, d) => (differs[d] ? gone[place++] === true : !hasRedAt(first, d)));
}

/**
 * What the misfit of cards tells of what is not known beside the scatter of their readings.
 *
 * A camera whose red channel sees more green than the mean one moves all cards together. One part of that looks like another water, and
 * the fit takes it for one; the other part no water explains, and it is left as misfit. Taken for scatter, that part would be counted
 * twice: as noise of the readings, and once more as the cause itself. So it is read as what it is: causes are normal beforehand, and
 * the misfit makes them surer. First order: exact for causes that move readings in proportion (linear regression with a normal prior).
 */
import { inverse } from "@sunfathom/optics";
import { itemAt } from "../../lists/non-empty.js";

export interface Told {
  /** Each cause's likely deviate, in standard deviations of what is known beforehand. */
  likely: number[];
  /**
   * How far they may be from that: moves of all deviates together, each a standard deviation of something that has nothing to do with
   * the others. A move of one cause alone by 1 where the misfit tells nothing.
   */
  moves: number[][];
}

/**
 * @param misfit of each reading over its standard deviation, with the causes at `assumed`
 * @param unexplained by how much a standard deviation of each cause moves the misfit of each reading, in the same units
 * @param weights what is left of each reading's weight
 */
export function toldBy(
  misfit: readonly number[],
  unexplained: readonly (readonly number[])[],
  weights: readonly number[],
  assumed: readonly number[],
): Told {
  const times = (one: readonly number[], other: readonly number[]): number =>
    weights.reduce((sum, weight, i) => sum + weight * itemAt(one, i) * itemAt(other, i), 0);
  const covariance = inverse(
    unexplained.map((one, j) => unexplained.map((other, k) => (j === k ? 1 : 0) + times(one, other))),
  );
  const pull = unexplained.map((one, j) => times(one, misfit) - itemAt(assumed, j));
  const likely = covariance.map((row, j) => itemAt(assumed, j) + along(row, pull));
  return { likely, moves: columnsOfRoot(covariance) };
}

const along = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, k) => sum + value * itemAt(other, k), 0);

/** Columns of L, L times its transpose being the matrix (Cholesky). */
function columnsOfRoot(matrix: readonly (readonly number[])[]): number[][] {
  const columns: number[][] = [];
  for (const [j, row] of matrix.entries()) {
    const left = row.map((value, i) =>
      columns.reduce((rest, column) => rest - itemAt(column, i) * itemAt(column, j), value),
    );
    const root = Math.sqrt(itemAt(left, j));
    columns.push(left.map((value, i) => (i < j ? 0 : value / root)));
  }
  return columns;
}

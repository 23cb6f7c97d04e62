/** A grade: what turns recorded values into colours, red, green and blue mixed by a matrix after a black level is taken off. */
import { apply, type Matrix3, type Vector3 } from "./matrix.js";

export interface Grade {
  matrix: Matrix3;
  offset: Vector3;
}

export interface GradeTarget {
  from: Vector3;
  to: Vector3;
  weight: number;
  /** Variance of each component of `from`: keeps the fit from amplifying what is mostly noise. */
  variance: Vector3;
}

export const graded = ({ matrix, offset }: Grade, v: Vector3): Vector3 => {
  const [x, y, z] = apply(matrix, v);
  return [x + offset[0], y + offset[1], z + offset[2]];
};

const SIZE = 4;

/** Solves a x = b for three right-hand sides by elimination with pivoting. @throws RangeError when singular. */
function solve(a: number[][], b: number[][]): number[][] {
  for (let col = 0; col < SIZE; col++) {
    let pivot = col;
    for (let row = col + 1; row < SIZE; row++)
      if (Math.abs(a[row][col]) > Math.abs(a[pivot][col])) pivot = row;
    if (!(Math.abs(a[pivot][col]) > 0)) throw new RangeError("the targets do not fix a grade");
    [a[col], a[pivot]] = [a[pivot], a[col]];
    [b[col], b[pivot]] = [b[pivot], b[col]];
    for (let row = 0; row < SIZE; row++) {
      if (row === col) continue;
      const factor = a[row][col] / a[col][col];
      for (let k = col; k < SIZE; k++) a[row][k] -= factor * a[col][k];
      for (let k = 0; k < 3; k++) b[row][k] -= factor * b[col][k];
    }
  }
  return b.map((row, i) => row.map((value) => value / a[i][i]));
}

/** The grade that takes `from` to `to` with the least weighted square error that can be expected, noise included. */
export function fitGrade(targets: readonly GradeTarget[]): Grade {
  const a = Array.from({ length: SIZE }, () => [0, 0, 0, 0]);
  const b = Array.from({ length: SIZE }, () => [0, 0, 0]);
  for (const { from, to, weight, variance } of targets) {
    const v = [from[0], from[1], from[2], 1];
    for (let i = 0; i < SIZE; i++) {
      for (let j = 0; j < SIZE; j++) a[i][j] += weight * v[i] * v[j];
      for (let k = 0; k < 3; k++) b[i][k] += weight * v[i] * to[k];
    }
    for (let i = 0; i < 3; i++) a[i][i] += weight * variance[i];
  }
  const x = solve(a, b);
  const row = (k: 0 | 1 | 2): Vector3 => [x[0][k], x[1][k], x[2][k]];
  return { matrix: [row(0), row(1), row(2)], offset: [x[3][0], x[3][1], x[3][2]] };
}

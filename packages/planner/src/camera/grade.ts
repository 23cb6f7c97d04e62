/** A grade: what turns recorded values into colours, red, green and blue mixed by a matrix after a black level is taken off. */
import { apply, type Matrix3, type Place, type Vector3 } from "./matrix.js";

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

export function graded({ matrix, offset }: Grade, v: Vector3): Vector3 {
  const [x, y, z] = apply(matrix, v);
  return [x + offset[0], y + offset[1], z + offset[2]];
}

/** The equations of a fit: one for each component and one for the offset. */
type Four<T> = [T, T, T, T];
const EQUATIONS = [0, 1, 2, 3] as const;
const COMPONENTS = [0, 1, 2] as const;
type Equation = (typeof EQUATIONS)[number];

type Square = Four<Four<number>>;
type RightHandSides = Four<[number, number, number]>;

/** Solves a x = b for three right-hand sides by elimination with pivoting. @throws RangeError when singular. */
function solve(a: Square, b: RightHandSides): RightHandSides {
  for (const col of EQUATIONS) {
    let pivot: Equation = col;
    for (const row of EQUATIONS)
      if (row > col && Math.abs(a[row][col]) > Math.abs(a[pivot][col])) pivot = row;
    if (!(Math.abs(a[pivot][col]) > 0)) throw new RangeError("the targets do not fix a grade");
    [a[col], a[pivot]] = [a[pivot], a[col]];
    [b[col], b[pivot]] = [b[pivot], b[col]];
    for (const row of EQUATIONS) {
      if (row === col) continue;
      const factor = a[row][col] / a[col][col];
      for (const k of EQUATIONS) if (k >= col) a[row][k] -= factor * a[col][k];
      for (const k of COMPONENTS) b[row][k] -= factor * b[col][k];
    }
  }
  for (const row of EQUATIONS) for (const k of COMPONENTS) b[row][k] /= a[row][row];
  return b;
}

const four = <T>(f: () => T): Four<T> => [f(), f(), f(), f()];

/** The grade that takes `from` to `to` with the least weighted square error that can be expected, noise included. */
export function fitGrade(targets: readonly GradeTarget[]): Grade {
  const a: Square = four(() => [0, 0, 0, 0]);
  const b: RightHandSides = four(() => [0, 0, 0]);
  for (const { from, to, weight, variance } of targets) {
    const v: Four<number> = [from[0], from[1], from[2], 1];
    for (const i of EQUATIONS) {
      for (const j of EQUATIONS) a[i][j] += weight * v[i] * v[j];
      for (const k of COMPONENTS) b[i][k] += weight * v[i] * to[k];
    }
    for (const i of COMPONENTS) a[i][i] += weight * variance[i];
  }
  const x = solve(a, b);
  const row = (k: Place): Vector3 => [x[0][k], x[1][k], x[2][k]];
  return { matrix: [row(0), row(1), row(2)], offset: x[3] };
}

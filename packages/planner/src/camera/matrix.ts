/** 3 x 3 matrices as rows. */
export type Vector3 = readonly [number, number, number];
export type Matrix3 = readonly [Vector3, Vector3, Vector3];

/** The place of red, green or blue, or of X, Y or Z. */
export type Place = 0 | 1 | 2;

export const perPlace = <T>(f: (place: Place) => T): [T, T, T] => [f(0), f(1), f(2)];

export const apply = (m: Matrix3, v: Vector3): Vector3 => [
  m[0][0] * v[0] + m[0][1] * v[1] + m[0][2] * v[2],
  m[1][0] * v[0] + m[1][1] * v[1] + m[1][2] * v[2],
  m[2][0] * v[0] + m[2][1] * v[1] + m[2][2] * v[2],
];

/** @throws RangeError when the matrix is singular. */
export function invert(m: Matrix3): Matrix3 {
  const [[a, b, c], [d, e, f], [g, h, i]] = m;
  const A = e * i - f * h;
  const B = f * g - d * i;
  const C = d * h - e * g;
  const det = a * A + b * B + c * C;
  if (!(Math.abs(det) > 0)) throw new RangeError("singular matrix");
  return [
    [A / det, (c * h - b * i) / det, (b * f - c * e) / det],
    [B / det, (a * i - c * g) / det, (c * d - a * f) / det],
    [C / det, (b * g - a * h) / det, (a * e - b * d) / det],
  ];
}

export function multiplyMatrices(p: Matrix3, q: Matrix3): Matrix3 {
  const row = (r: Vector3): Vector3 => [
    r[0] * q[0][0] + r[1] * q[1][0] + r[2] * q[2][0],
    r[0] * q[0][1] + r[1] * q[1][1] + r[2] * q[2][1],
    r[0] * q[0][2] + r[1] * q[1][2] + r[2] * q[2][2],
  ];
  return [row(p[0]), row(p[1]), row(p[2])];
}

export interface WeightedPair {
  from: Vector3;
  to: Vector3;
  weight: number;
  /** Variance of each component of `from`: keeps the fit from amplifying what is mostly noise. */
  variance: Vector3;
}

/** The matrix that takes `from` to `to` with the least weighted square error that can be expected, noise included. */
export function fitMatrix(pairs: readonly WeightedPair[]): Matrix3 {
  const square = (i: Place, j: Place): number => {
    let sum = 0;
    for (const { from, weight, variance } of pairs) {
      sum += weight * from[i] * from[j];
      if (i === j) sum += weight * variance[i];
    }
    return sum;
  };
  const cross = (i: Place, j: Place): number => {
    let sum = 0;
    for (const { from, to, weight } of pairs) sum += weight * to[i] * from[j];
    return sum;
  };
  return multiplyMatrices(matrixOf(cross), invert(matrixOf(square)));
}

const matrixOf = (f: (row: Place, column: Place) => number): Matrix3 =>
  perPlace((row) => perPlace((column) => f(row, column)));

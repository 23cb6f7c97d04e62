// Guards the algebra by its laws: each matrix is of no special kind, so that no two entries can change places unseen.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { apply, fitMatrix, invert, type Matrix3, multiplyMatrices, type Vector3 } from "./matrix.js";

const IDENTITY: Matrix3 = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const NONE: Vector3 = [0, 0, 0];
const entry = fc.double({ min: -1, max: 1, noNaN: true });
const vector = fc.tuple(entry, entry, entry);
/** Far from singular: what lies on the diagonal outweighs its row. */
const matrix = fc.tuple(vector, vector, vector).map(
  (m): Matrix3 => [
    [m[0][0] + 4, m[0][1], m[0][2]],
    [m[1][0], m[1][1] + 4, m[1][2]],
    [m[2][0], m[2][1], m[2][2] + 4],
  ],
);

const expectClose = (a: Matrix3, b: Matrix3, digits = 9) =>
  a.forEach((row, i) => {
    row.forEach((value, j) => {
      expect(value).toBeCloseTo(b[i][j], digits);
    });
  });

describe("3 x 3 matrices", () => {
  it("apply and multiply by hand", () => {
    const m: Matrix3 = [
      [1, 2, 3],
      [4, 5, 6],
      [7, 8, 10],
    ];
    expect(apply(m, [1, 10, 100])).toEqual([321, 654, 1087]);
    expect(multiplyMatrices(m, IDENTITY)).toEqual(m);
    // A matrix that moves the second axis to the first, the third to the second, and drops the first.
    const shift: Matrix3 = [
      [0, 1, 0],
      [0, 0, 1],
      [0, 0, 0],
    ];
    expect(multiplyMatrices(m, shift)).toEqual([
      [0, 1, 2],
      [0, 4, 5],
      [0, 7, 8],
    ]);
  });

  it("multiply as one is applied after the other (law)", () => {
    fc.assert(
      fc.property(matrix, matrix, vector, (p, q, v) => {
        const [at_once, in_turn] = [apply(multiplyMatrices(p, q), v), apply(p, apply(q, v))];
        at_once.forEach((value, i) => {
          expect(value).toBeCloseTo(in_turn[i], 9);
        });
      }),
      { seed: 1, numRuns: 50 },
    );
  });

  it("undo themselves by their inverse, from either side (law), and refuse where there is none", () => {
    fc.assert(
      fc.property(matrix, (m) => {
        expectClose(multiplyMatrices(m, invert(m)), IDENTITY);
        expectClose(multiplyMatrices(invert(m), m), IDENTITY);
      }),
      { seed: 2, numRuns: 50 },
    );
    const flat: Matrix3 = [
      [1, 2, 3],
      [2, 4, 6],
      [1, 0, 1],
    ];
    expect(() => invert(flat)).toThrow(RangeError);
    expect(() => invert(flat)).toThrow("singular");
    // A mirror has a determinant below zero, and is its own inverse.
    const mirror: Matrix3 = [
      [0, 1, 0],
      [1, 0, 0],
      [0, 0, 1],
    ];
    expectClose(invert(mirror), mirror);
  });
});

describe("the fit of a matrix", () => {
  const pair = (from: Vector3, to: Vector3, weight = 1, variance = NONE) => ({ from, to, weight, variance });
  const AXES = [pair([0, 1, 0], [0, 1, 0]), pair([0, 0, 1], [0, 0, 1])];

  it("finds the matrix that the pairs come from, where they come from one", () => {
    fc.assert(
      fc.property(matrix, fc.array(vector, { minLength: 4, maxLength: 8 }), (m, others) => {
        const from: Vector3[] = [[2, 0, 0], [0, 3, 0], [0, 0, 1], ...others];
        const pairs = from.map((v, i) => pair(v, apply(m, v), 1 + i));
        expectClose(fitMatrix(pairs), m, 6);
      }),
      { seed: 3, numRuns: 30 },
    );
  });

  it("comes to the weighted mean of pairs that contradict each other (least squares)", () => {
    // (3 * 1 + 1 * 5) / 4
    const m = fitMatrix([pair([1, 0, 0], [1, 0, 2], 3), pair([1, 0, 0], [5, 0, 2], 1), ...AXES]);
    expect(apply(m, [1, 0, 0])).toEqual([2, 0, 2]);
  });

  it("follows an axis the less the more of it is noise: by signal over signal and noise (Wiener), each axis by its own", () => {
    const noisy = (variance: Vector3) => [
      pair([2, 0, 0], [2, 0, 0], 5, variance),
      pair([0, 2, 0], [0, 2, 0], 5, variance),
      pair([0, 0, 2], [0, 0, 2], 5, variance),
    ];
    // Each axis has the noise of all three pairs: 4 / (4 + 3 v).
    expectClose(fitMatrix(noisy([1, 2, 4])), [
      [4 / 7, 0, 0],
      [0, 4 / 10, 0],
      [0, 0, 4 / 16],
    ]);
    // Noise weighs as its pair does: signals of 1 with weights of 1 and 0.5, and 0.5 * 3 of noise.
    const [a, b] = [pair([1, 0, 0], [1, 0, 0]), pair([1, 0, 0], [1, 0, 0], 0.5, [3, 0, 0])];
    expect(fitMatrix([a, b, ...AXES])[0][0]).toBeCloseTo(1.5 / (1.5 + 1.5), 12);
  });
});

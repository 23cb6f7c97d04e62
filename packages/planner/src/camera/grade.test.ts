import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitGrade, type GradeTarget, graded } from "./grade.js";
import { apply, fitMatrix, invert, type Matrix3, multiplyMatrices, type Vector3 } from "./matrix.js";

const part = fc.integer({ min: -200, max: 200 }).map((n) => n / 100);
const colour = fc.tuple(
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.double({ min: 0, max: 1, noNaN: true }),
);
const vector = fc.tuple(part, part, part);
const matrix: fc.Arbitrary<Matrix3> = fc.tuple(vector, vector, vector);

/** Colours that span the space whatever else is drawn. */
const CORNERS: Vector3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [1, 1, 1],
  [0.2, 0.5, 0.1],
  [0, 0, 0],
];
const exact: Vector3 = [0, 0, 0];

describe("a fitted matrix", () => {
  it("is the one that made the colours, where there is no noise (linear algebra)", () => {
    fc.assert(
      fc.property(matrix, fc.array(colour, { maxLength: 6 }), (m, more) => {
        const pairs = [...CORNERS, ...more].map((from, i) => ({
          from,
          to: apply(m, from),
          weight: 1 + i,
          variance: exact,
        }));
        fitMatrix(pairs).forEach((row, i) => {
          row.forEach((v, j) => {
            expect(v).toBeCloseTo(m[i][j], 8);
          });
        });
      }),
      { seed: 3, numRuns: 40 },
    );
  });

  it("shrinks a channel that is noise: to S / (S + N) of its true weight, as Wiener's filter has it", () => {
    const pairs = ([0, 1, 2] as const).map((k) => {
      const from: Vector3 = [k === 0 ? 1 : 0, k === 1 ? 1 : 0, k === 2 ? 1 : 0];
      return { from, to: from, weight: 1, variance: [1, 0, 0] as Vector3 };
    });
    const m = fitMatrix(pairs);
    // Signal power 1 in red, noise 1 from each of three pairs: 1 / (1 + 3).
    expect(m[0][0]).toBeCloseTo(0.25, 12);
    expect(m[1][1]).toBeCloseTo(1, 12);
  });
});

describe("an inverse", () => {
  it("undoes its matrix", () => {
    fc.assert(
      fc.property(matrix, (m) => {
        const [[a, b, c], [d, e, f], [g, h, i]] = m;
        fc.pre(Math.abs(a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)) > 0.1);
        multiplyMatrices(m, invert(m)).forEach((row, r) => {
          row.forEach((v, k) => {
            expect(v).toBeCloseTo(r === k ? 1 : 0, 8);
          });
        });
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it("of a singular matrix is refused", () => {
    expect(() =>
      invert([
        [1, 2, 3],
        [2, 4, 6],
        [0, 1, 0],
      ]),
    ).toThrow(RangeError);
  });
});

describe("a grade, matrix and black level", () => {
  const target = (from: Vector3, to: Vector3, weight: number): GradeTarget => ({
    from,
    to,
    weight,
    variance: exact,
  });

  it("is the one that made the colours, where there is no noise", () => {
    fc.assert(
      fc.property(matrix, vector, (m, offset) => {
        const targets = CORNERS.map((from, i) => target(from, graded({ matrix: m, offset }, from), 1 + i));
        const found = fitGrade(targets);
        found.matrix.forEach((row, i) => {
          row.forEach((v, j) => {
            expect(v).toBeCloseTo(m[i][j], 8);
          });
          expect(found.offset[i]).toBeCloseTo(offset[i], 8);
        });
      }),
      { seed: 5, numRuns: 40 },
    );
  });

  it("leaves no weighted residual along any channel, nor on average (normal equations of least squares)", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(colour, colour), { minLength: 8, maxLength: 20 }), (extra) => {
        const targets = [
          ...CORNERS.map((c) => target(c, [c[1], c[2], c[0]], 1)),
          ...extra.map(([f, t], i) => target(f, t, 1 + (i % 3))),
        ];
        const grade = fitGrade(targets);
        for (let k = 0; k < 3; k++) {
          for (const along of [0, 1, 2, 3]) {
            const sum = targets.reduce((s, { from, to, weight }) => {
              return s + weight * (to[k] - graded(grade, from)[k]) * ([...from, 1][along] ?? 0);
            }, 0);
            expect(sum).toBeCloseTo(0, 8);
          }
        }
      }),
      { seed: 6, numRuns: 30 },
    );
  });

  it("shrinks a channel that is noise to S / (S + N), as Wiener's filter has it, and lifts black to the mean", () => {
    // Red of 0 and 2: variance 1 around its mean. A noise of variance 3 leaves a quarter of its slope.
    const targets = [0, 2].flatMap((red) =>
      [0, 1].flatMap((green) =>
        [0, 1].map((blue): GradeTarget => {
          const from: Vector3 = [red, green, blue];
          return { from, to: from, weight: 2, variance: [3, 0, 0] };
        }),
      ),
    );
    const { matrix: m, offset } = fitGrade(targets);
    expect(m[0][0]).toBeCloseTo(0.25, 12);
    expect(offset[0]).toBeCloseTo(0.75, 12);
    expect([m[1][1], m[2][2]]).toEqual([expect.closeTo(1, 12), expect.closeTo(1, 12)]);
    expect(offset[1]).toBeCloseTo(0, 12);
  });

  it("cannot be fixed by colours that are all alike", () => {
    const same = Array.from({ length: 5 }, () => target([0.5, 0.5, 0.5], [1, 1, 1], 1));
    expect(() => fitGrade(same)).toThrow(RangeError);
    // Nor by none, or by black alone: every pivot is nothing.
    expect(() => fitGrade([])).toThrow(RangeError);
  });
});

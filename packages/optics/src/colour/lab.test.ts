import { Lab, Lab_D65, to, XYZ_D50, XYZ_D65 } from "colorjs.io/fn";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { labOf } from "./lab.js";

const part = fc.double({ min: 0, max: 1.2, noNaN: true });
const xyz = fc.tuple(part, part, part);

describe("CIELAB", () => {
  it.each([
    { white: "D65", from: XYZ_D65, space: Lab_D65 },
    { white: "D50", from: XYZ_D50, space: Lab },
  ])("agrees with a general colour library under $white, dark colours included (colorjs.io 0.7)", (their) => {
    const [X, Y, Z] = their.from.white;
    fc.assert(
      fc.property(xyz, fc.constantFrom(1, 0.01), (bright, level) => {
        const colour = bright.map((v) => v * level) as [number, number, number];
        const theirs = to({ space: their.from, coords: colour, alpha: 1 }, their.space).coords;
        labOf(colour, [X, Y, Z]).forEach((value, i) => {
          expect(value).toBeCloseTo(theirs[i] ?? Number.NaN, 8);
        });
      }),
      { seed: 1976, numRuns: 200 },
    );
  });

  it("gives L* 50 at Y = (66/116)^3, 18.4187 %, and 8 where its branches meet at (24/116)^3 (CIE 15)", () => {
    const [L, a, b] = labOf([0.1841865, 0.1841865, 0.1841865], [1, 1, 1]);
    expect(L).toBeCloseTo(50, 5);
    expect([a, b]).toEqual([0, 0]);
    expect(labOf([1, (24 / 116) ** 3, 1], [1, 1, 1])[0]).toBeCloseTo(8, 12);
    expect(labOf([1, (24 / 116) ** 3 * 1.00001, 1], [1, 1, 1])[0]).toBeCloseTo(8, 3);
  });

  it("does not depend on the unit in which colour and white are given", () => {
    const small = labOf([0.2, 0.3, 0.1], [0.95, 1, 1.09]);
    const large = labOf([20, 30, 10], [95, 100, 109]);
    small.forEach((v, i) => {
      expect(v).toBeCloseTo(large[i], 10);
    });
  });
});

import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import { deltaE2000, Lab as LabD50 } from "colorjs.io/fn";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deltaE00 } from "./ciede2000.js";
import type { Lab } from "./lab.js";

const pairs = readTable("sharma_2005_ciede2000").map((row) => {
  const lab = (n: 1 | 2): Lab => [numberIn(row, `L${n}`), numberIn(row, `a${n}`), numberIn(row, `b${n}`)];
  return { pair: row["pair"], first: lab(1), second: lab(2), deltaE00: numberIn(row, "deltaE00") };
});
// Steps of 0.01: the library takes colours of still less chroma as grey.
const side = fc.integer({ min: -12000, max: 12000 }).map((n) => n / 100);
const lab: fc.Arbitrary<Lab> = fc.tuple(fc.double({ min: 0, max: 100, noNaN: true }), side, side);

describe("CIEDE2000", () => {
  it("has all 34 pairs of Sharma, Wu & Dalal 2005, Table 1", () => {
    expect(pairs.length).toBe(34);
  });

  it.each(pairs)("gives pair $pair of Sharma, Wu & Dalal 2005 within 1e-4, both ways round", (pair) => {
    expect(Math.abs(deltaE00(pair.first, pair.second) - pair.deltaE00)).toBeLessThan(1e-4);
    expect(Math.abs(deltaE00(pair.second, pair.first) - pair.deltaE00)).toBeLessThan(1e-4);
  });

  it("agrees with a general colour library on random colours (colorjs.io 0.7)", () => {
    fc.assert(
      fc.property(lab, lab, (a, b) => {
        const theirs = deltaE2000(
          { space: LabD50, coords: [...a], alpha: 1 },
          { space: LabD50, coords: [...b], alpha: 1 },
        );
        expect(Math.abs(deltaE00(a, b) - theirs)).toBeLessThan(1e-9);
      }),
      { seed: 2005, numRuns: 300 },
    );
  });

  it("is zero for equal colours and never negative", () => {
    fc.assert(
      fc.property(lab, lab, (a, b) => {
        expect(deltaE00(a, a)).toBe(0);
        expect(deltaE00(a, b)).toBeGreaterThanOrEqual(0);
      }),
      { seed: 2006, numRuns: 100 },
    );
  });
});

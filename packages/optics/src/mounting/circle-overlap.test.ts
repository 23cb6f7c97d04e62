import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { discShareInside } from "./circle-overlap.js";

/** The same area by counting strips of the disc. */
function byStrips(disc: number, opening: number, shift: number): number {
  const strips = 20000;
  let area = 0;
  for (let i = 0; i < strips; i++) {
    const x = disc * (-1 + (2 * i + 1) / strips);
    const inDisc = Math.sqrt(disc * disc - x * x);
    const inOpening = Math.sqrt(Math.max(0, opening * opening - (x - shift) ** 2));
    area += Math.min(inDisc, inOpening) * 2 * ((2 * disc) / strips);
  }
  return area / (Math.PI * disc * disc);
}

const radius = fc.double({ min: 0.1, max: 50, noNaN: true });

describe("share of a disc inside a circle", () => {
  it("is 2/3 - sqrt(3)/2pi = 0.3910 for equal circles through each other's centres (MathWorld, exact)", () => {
    expect(discShareInside(1, 1, 1)).toBeCloseTo(2 / 3 - Math.sqrt(3) / (2 * Math.PI), 14);
  });

  it("is all inside, nothing outside, and the ratio of areas for an opening inside the disc", () => {
    expect(discShareInside(2, 5, 3)).toBe(1);
    expect(discShareInside(2, 5, 7)).toBe(0);
    expect(discShareInside(5, 2, 1)).toBeCloseTo(4 / 25, 15);
  });

  it("nears one half where the opening's edge runs through the centre of a small disc, and stays below it", () => {
    expect(discShareInside(0.001, 30, 30)).toBeCloseTo(0.5, 4);
    expect(discShareInside(2, 30, 30)).toBeLessThan(0.5);
    expect(discShareInside(2, 30, 30)).toBeGreaterThan(0.48);
  });

  it("agrees with counting strips", () => {
    fc.assert(
      fc.property(radius, radius, fc.double({ min: 0, max: 60, noNaN: true }), (disc, opening, shift) => {
        expect(discShareInside(disc, opening, shift)).toBeCloseTo(byStrips(disc, opening, shift), 4);
      }),
      { seed: 22, numRuns: 60 },
    );
  });

  it("lies between 0 and 1, grows with the opening and shrinks with the shift", () => {
    const shift = fc.double({ min: 0, max: 120, noNaN: true });
    const more = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(radius, radius, shift, more, (disc, opening, at, extra) => {
        const share = discShareInside(disc, opening, at);
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
        expect(discShareInside(disc, opening + extra, at)).toBeGreaterThanOrEqual(share - 1e-9);
        expect(discShareInside(disc, opening, at + extra)).toBeLessThanOrEqual(share + 1e-9);
      }),
      { seed: 23, numRuns: 300 },
    );
  });
});

import { column, readTable } from "@sunfathom/fixtures/tables";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  apparentDistance,
  flatPortField_deg,
  flatPortMagnification,
  lateralColour_percent,
} from "./flat-port.js";

const RADIAN = Math.PI / 180;

describe("flat port", () => {
  it("obeys n sin w = sin a (Snell, exact): 90 degrees in air become 63.7 in water at n = 1.34", () => {
    // asin(sin 45 / 1.34) = 31.85 degrees, worked by hand.
    expect(flatPortField_deg(90)).toBeCloseTo(63.7, 1);
    expect(1.34 * Math.sin((flatPortField_deg(90) / 2) * RADIAN)).toBeCloseTo(Math.SQRT1_2, 14);
  });

  it("never sees more than the 97 degrees of the window of total reflection, at n = 4/3 (asin(3/4), textbook)", () => {
    expect(flatPortField_deg(180, 4 / 3)).toBeCloseTo(97.18, 2);
  });

  it("enlarges by n: small fields shrink by it, and things appear at 3/4 of their distance at n = 4/3 (textbook)", () => {
    expect(0.01 / flatPortField_deg(0.01)).toBeCloseTo(flatPortMagnification(), 8);
    expect(apparentDistance(4, 4 / 3)).toBeCloseTo(3, 15);
  });

  it("narrows every field, the more the wider", () => {
    const field = fc.double({ min: 1, max: 179, noNaN: true });
    fc.assert(
      fc.property(field, field, (a, b) => {
        const [narrow, wide] = a < b ? [a, b] : [b, a];
        expect(flatPortField_deg(narrow)).toBeLessThan(narrow / 1.33);
        if (wide - narrow > 1e-6) {
          expect(flatPortField_deg(wide)).toBeGreaterThan(flatPortField_deg(narrow));
          expect(flatPortField_deg(wide) / wide).toBeLessThan(flatPortField_deg(narrow) / narrow);
        }
      }),
      { seed: 134, numRuns: 100 },
    );
  });

  it("parts blue from red near the axis by the difference of their indices, n(450) - n(650) over n (Quan & Fry 1995)", () => {
    const table = readTable("seawater_refractive_index");
    const nm = column(table, "wavelength_nm");
    const n = column(table, "n_vs_air_S35_T20");
    const expected = (100 * (n[nm.indexOf(450)] - n[nm.indexOf(650)])) / 1.34;
    expect(lateralColour_percent(0.01)).toBeCloseTo(expected, 5);
    expect(lateralColour_percent(0.01, "equisolid")).toBeCloseTo(expected, 5);
    expect(expected).toBeCloseTo(0.612, 3);
  });

  it("parts them more towards the edge: by 1 / cos^2 a in a rectilinear picture (derivative of tan asin, to first order)", () => {
    // d(tan a) / tan a = (dn / n) / cos^2 a, so twice as much at 45 degrees.
    expect(lateralColour_percent(45)! / lateralColour_percent(0.01)!).toBeCloseTo(2, 1);
    for (let a = 1; a < 80; a++) {
      expect(lateralColour_percent(a + 1)!).toBeGreaterThan(lateralColour_percent(a)!);
    }
  });

  it("has no lateral colour to give where blue is reflected back into the water", () => {
    expect(lateralColour_percent(84)).toBeGreaterThan(0);
    expect(lateralColour_percent(86)).toBeUndefined();
  });
});

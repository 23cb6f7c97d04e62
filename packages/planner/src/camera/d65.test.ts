import { multiply, onGrid } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { WHITE_D65, xyzUnderD65 } from "./d65.js";

/** A surface that reflects a share of each wavelength in a band and nothing else. */
const band = (from_nm: number, to_nm: number, share = 1) =>
  onGrid([from_nm - 1, from_nm, to_nm, to_nm + 1], [0, share, share, 0], 0);

describe("tristimulus values under D65", () => {
  it("are those of D65 for a perfect white: XYZ 0.9504, 1, 1.0889 (CIE 15)", () => {
    expect(WHITE_D65[0]).toBeCloseTo(0.9504, 3);
    expect(WHITE_D65[1]).toBeCloseTo(1, 12);
    expect(WHITE_D65[2]).toBeCloseTo(1.0889, 2);
  });

  it("are a share of white's for a grey, and add up over bands (Grassmann's laws)", () => {
    const grey = xyzUnderD65(band(380, 780, 0.18));
    const white = xyzUnderD65(band(380, 780));
    const [low, high] = [xyzUnderD65(band(380, 550)), xyzUnderD65(band(555, 780))];
    for (const k of [0, 1, 2]) {
      expect(grey[k]).toBeCloseTo(0.18 * WHITE_D65[k], 9);
      expect(white[k]).toBeCloseTo(WHITE_D65[k], 9);
      expect(low[k] + high[k]).toBeCloseTo(WHITE_D65[k], 9);
    }
  });

  it("are most of Z in blue, of Y in green and of X in red, and hardly of Z beyond 550 nm (CIE 1931)", () => {
    const [blue, green, red] = [band(400, 490), band(520, 580), band(600, 700)].map(xyzUnderD65);
    expect(Math.max(...blue)).toBe(blue[2]);
    expect(Math.max(...green)).toBe(green[1]);
    expect(Math.max(...red)).toBe(red[0]);
    expect(red[2]).toBeLessThan(0.01 * red[0]);
    // What reflects nothing has none.
    expect(xyzUnderD65(multiply(band(400, 450), band(600, 650)))).toEqual([0, 0, 0]);
  });
});

import { describe, expect, it } from "vitest";
import { transferSlope } from "./transfer.js";

/** Rec. ITU-R BT.2100-2, table 5: the opto-electronic transfer function of HLG, with its constants as printed. */
function hlg(light: number): number {
  return light <= 1 / 12 ? Math.sqrt(3 * light) : 0.17883277 * Math.log(12 * light - 0.28466892) + 0.55991073;
}
/** Scene light at which that curve gives 0.75, by halving. */
function whiteOfHlg(): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (hlg(middle) < 0.75) low = middle;
    else high = middle;
  }
  return low;
}

describe("the slope of a recording curve", () => {
  it.each([1, 0.5, 0.18, 0.05, 0.01])(
    "of HLG is that of ITU-R BT.2100, with white at 75 %% of the codes (Report ITU-R BT.2408), at a light of %d",
    (linear) => {
      const white = whiteOfHlg();
      // A diffuse white lies near 26 % of the highest scene light.
      expect(white).toBeCloseTo(0.265, 3);
      const d = 1e-6;
      const slope = (hlg((linear + d) * white) - hlg((linear - d) * white)) / (2 * d);
      expect(transferSlope("hlg", linear) / slope).toBeCloseTo(1, 5);
    },
  );

  it("of HLG is finite in the dark, and never less than on a brighter level", () => {
    const slopes = [0, 1e-6, 1e-4, 0.01, 0.1, 0.3, 0.32, 0.5, 1].map((linear) =>
      transferSlope("hlg", linear),
    );
    expect(slopes.every(Number.isFinite)).toBe(true);
    expect(slopes).toEqual([...slopes].sort((a, b) => b - a));
  });

  it("of points is that of the line between them, the first and the last led on", () => {
    const points = [
      { light_share: 0, code_share: 0.1 },
      { light_share: 0.2, code_share: 0.5 },
      { light_share: 1, code_share: 0.9 },
    ];
    expect([0, 0.1, 0.2, 0.6, 1].map((linear) => transferSlope(points, linear))).toEqual(
      [2, 2, 0.5, 0.5, 0.5].map((slope) => expect.closeTo(slope, 12)),
    );
  });

  it("of points along BT.709 comes to that of BT.709", () => {
    const stored = (light: number) => (light < 0.018 ? 4.5 * light : 1.099 * light ** 0.45 - 0.099);
    const points = Array.from({ length: 2001 }, (_, i) => ({
      light_share: i / 2000,
      code_share: stored(i / 2000),
    }));
    for (const linear of [0.00525, 0.10025, 0.50025, 0.90025])
      expect(transferSlope(points, linear) / transferSlope("rec709", linear)).toBeCloseTo(1, 4);
  });
});

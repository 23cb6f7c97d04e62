import { describe, expect, it } from "vitest";
import { codeShare, linearAt } from "./code-curve.js";
import { HLG_WHITE, type Transfer, transferSlope } from "./transfer.js";

const POINTS = [
  { light_share: 0, code_share: 0.1 },
  { light_share: 0.2, code_share: 0.5 },
  { light_share: 1, code_share: 0.9 },
];
const CURVES: readonly Transfer[] = ["rec709", "hlg", "log", "linear", POINTS];
const LIGHTS = [0.0005, 0.004, 0.03, 0.18, 0.4, 0.9, 1];

describe.each(CURVES)("the codes of %s", (curve) => {
  it("lead back to their light", () => {
    for (const light of LIGHTS) expect(linearAt(curve, codeShare(curve, light)) / light).toBeCloseTo(1, 9);
  });

  it("rise as steeply as the slope says that noise is counted by", () => {
    for (const light of LIGHTS) {
      const d = 1e-7 * light;
      const slope = (codeShare(curve, light + d) - codeShare(curve, light - d)) / (2 * d);
      expect(slope / transferSlope(curve, light), String(light)).toBeCloseTo(1, 4);
    }
  });
});

describe("published values", () => {
  it("of ITU-R BT.709, item 1.2: 1.099 L^0.45 - 0.099, and 4.5 L below 0.018", () => {
    expect(codeShare("rec709", 1)).toBeCloseTo(1, 12);
    expect(codeShare("rec709", 0.18)).toBeCloseTo(0.409, 3);
    expect(codeShare("rec709", 0.01)).toBeCloseTo(0.045, 12);
  });

  it("of ITU-R BT.2100-2, table 5: the curve's two parts meet at a light of 1/12 and a code of 0.5", () => {
    expect(codeShare("hlg", 1 / 12 / HLG_WHITE)).toBeCloseTo(0.5, 9);
    expect(codeShare("hlg", 1)).toBeCloseTo(0.75, 9);
    expect(codeShare("hlg", 0)).toBe(0);
  });
});

it("takes a code that log has for no light to no light", () => {
  expect(linearAt("log", codeShare("log", 0))).toBeCloseTo(0, 12);
});

import { describe, expect, it } from "vitest";
import { linearLight } from "./transfer-curve.js";

describe("transfer curves", () => {
  it.each([
    // IEC 61966-2-1: breakpoint, and the mid value 0.5 whose linear light is 0.2140.
    ["srgb", 0.04045, 0.0031308],
    // Below the breakpoints both are straight lines: one 12.92nd, one 4.5th. The curves above, led on, would be 0.00103 and 0.00898.
    ["srgb", 0.01, 0.01 / 12.92],
    ["rec709", 0.03, 0.03 / 4.5],
    ["srgb", 0.5, 0.21404],
    ["srgb", 1, 1],
    // ITU-R BT.709, item 1.2: L = 0.018 is stored as 0.081, and 1.099 L^0.45 - 0.099 puts L = 0.18 at 0.4090.
    ["rec709", 0.081, 0.018],
    ["rec709", 0.409, 0.18],
    ["rec709", 1, 1],
    ["linear", 0.3, 0.3],
  ] as const)("%s: %s stands for %s", (curve, stored, light) => {
    expect(Math.abs(linearLight(stored, curve) - light)).toBeLessThan(1e-4);
  });

  it("rises without a jump at the breakpoints", () => {
    for (const curve of ["srgb", "rec709"] as const) {
      for (let stored = 0; stored < 1; stored += 0.001) {
        const step = linearLight(stored + 0.001, curve) - linearLight(stored, curve);
        expect(step).toBeGreaterThan(0);
        expect(step).toBeLessThan(0.003);
      }
    }
  });
});

import { describe, expect, it } from "vitest";
import { Z90 } from "../uncertainty/normal.js";
import { aimOff_deg } from "./lamp-aim.js";

describe("how far off lamps are aimed", () => {
  it("has the percentiles of a Rayleigh distribution of 8 degrees: median 1.1774 sigma, 90th 2.1460, 10th 0.4590 (closed form)", () => {
    expect(aimOff_deg(0)).toBeCloseTo(8 * 1.1774, 2);
    expect(aimOff_deg(Z90)).toBeCloseTo(8 * 2.146, 2);
    expect(aimOff_deg(-Z90)).toBeCloseTo(8 * 0.459, 2);
  });
});

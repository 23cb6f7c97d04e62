import { describe, expect, it } from "vitest";
import { beamFromVisibility_per_m, visibilityFromBeam_m } from "./visibility.js";

describe("visibility of a black target", () => {
  // Beam attenuation at 530 nm of Petzold 1972, SIO Ref. 72-78; distances from 4.8/c (Davies-Colley 1988) by hand.
  it.each([
    ["clear ocean", 0.151, 31.8],
    ["coast", 0.398, 12.1],
    ["turbid harbour", 2.19, 2.19],
  ])("%s: c = %s per m is seen through for %s m", (_, c, expected_m) => {
    expect(visibilityFromBeam_m(c)).toBeCloseTo(expected_m, 1);
    expect(beamFromVisibility_per_m(visibilityFromBeam_m(c))).toBeCloseTo(c, 12);
  });

  it("is the distance at which a contrast of one falls to less than 1 %", () => {
    // Contrast of a black target falls as exp(-c r) (Duntley 1963): exp(-4.8) = 0.0082.
    expect(Math.exp(-0.2 * visibilityFromBeam_m(0.2))).toBeCloseTo(0.0082, 4);
  });
});

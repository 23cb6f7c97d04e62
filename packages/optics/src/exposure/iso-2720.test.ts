import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  DOME_C,
  ev100FromDome,
  ev100FromIlluminance,
  ev100FromLuminance,
  exposureValue,
  INCIDENT_C,
  isoFor,
  REFLECTED_K,
} from "./iso-2720.js";

describe("exposure by ISO 2720:1974", () => {
  it("has EV 14.64 for f/16 at 1/100 s and EV 0 for f/1 at 1 s: EV = log2(N^2 / t)", () => {
    // log2(256 * 100) = 8 + 6.6439
    expect(exposureValue(16, 1 / 100)).toBeCloseTo(14.6439, 4);
    expect(exposureValue(1, 1)).toBe(0);
  });

  it("steps by one for half the time and by one for sqrt(2) in f-number", () => {
    expect(exposureValue(8, 1 / 100) - exposureValue(8, 1 / 50)).toBeCloseTo(1, 12);
    expect(exposureValue(8 * Math.SQRT2, 1 / 50) - exposureValue(8, 1 / 50)).toBeCloseTo(1, 12);
  });

  it("has a constant for a dome within the standard's range of 320 to 540, and meters sunlight of 87 klx at EV 14.6 with it", () => {
    expect(DOME_C).toBeGreaterThanOrEqual(320);
    expect(DOME_C).toBeLessThanOrEqual(540);
    // N^2 / t = E S / C by hand: 87 000 x 100 / 340 = 25 588, the 16^2 x 100 of f/16 at 1/100 s (25 600).
    expect(ev100FromDome(87_000)).toBeCloseTo(Math.log2(25_588), 4);
  });

  it("has constants within the standard's ranges, K 10.6 to 13.4 and C 240 to 400 for a flat receptor", () => {
    expect(REFLECTED_K).toBeGreaterThanOrEqual(10.6);
    expect(REFLECTED_K).toBeLessThanOrEqual(13.4);
    expect(INCIDENT_C).toBeGreaterThanOrEqual(240);
    expect(INCIDENT_C).toBeLessThanOrEqual(400);
  });

  it("takes EV 15 from 4096 cd/m2 and from 81 920 lx at ISO 100: L = 2^EV K / S, E = 2^EV C / S", () => {
    expect(ev100FromLuminance(4096)).toBeCloseTo(15, 12);
    expect(ev100FromIlluminance(81920)).toBeCloseTo(15, 12);
    expect(ev100FromLuminance(0.125)).toBeCloseTo(0, 12);
    expect(ev100FromIlluminance(2.5)).toBeCloseTo(0, 12);
  });

  it("agrees between both meters on a grey of pi K / C = 15.7 %, not 18 %", () => {
    const grey = (Math.PI * REFLECTED_K) / INCIDENT_C;
    expect(grey).toBeCloseTo(0.157, 3);
    expect(ev100FromLuminance((10000 * grey) / Math.PI)).toBeCloseTo(ev100FromIlluminance(10000), 12);
  });

  it("finds the ISO that pays for settings: S = 100 * 2^(EV - EV100)", () => {
    expect(isoFor(exposureValue(16, 1 / 100), 16, 1 / 100)).toBeCloseTo(100, 10);
    expect(isoFor(10, 4, 1 / 50)).toBeCloseTo((100 * 16 * 50) / 1024, 10);
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 18, noNaN: true }),
        fc.double({ min: 1, max: 22, noNaN: true }),
        fc.double({ min: 1e-4, max: 1, noNaN: true }),
        (ev, N, t) => {
          expect(exposureValue(N, t) - Math.log2(isoFor(ev, N, t) / 100)).toBeCloseTo(ev, 10);
        },
      ),
      { seed: 2720, numRuns: 50 },
    );
  });
});

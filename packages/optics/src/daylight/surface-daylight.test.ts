import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { integrate } from "../spectrum/integrate.js";
import { clearSkyBands } from "./clear-sky-bird-riordan-1986.js";
import { cloudTransmittance, kastenCzeplakClearSky_W_m2 } from "./kasten-czeplak-1980.js";
import { surfaceDaylight } from "./surface-daylight.js";

describe("cloud (Kasten & Czeplak 1980)", () => {
  it("leaves everything at 0 oktas, 92.9 % at 4 and a quarter at 8", () => {
    expect(cloudTransmittance(0)).toBe(1);
    // 1 - 0.75 / 2^3.4
    expect(cloudTransmittance(4)).toBeCloseTo(0.92895, 5);
    expect(cloudTransmittance(8)).toBe(0.25);
  });

  it("has a clear-sky irradiance of 425 W/m2 at 30 degrees and 880 overhead: 910 sin(h) - 30", () => {
    expect(kastenCzeplakClearSky_W_m2(30)).toBeCloseTo(425, 10);
    expect(kastenCzeplakClearSky_W_m2(90)).toBeCloseTo(880, 10);
  });
});

describe("daylight at the surface", () => {
  const elevation = fc.double({ min: 10, max: 90, noNaN: true });
  const oktas = fc.double({ min: 0, max: 8, noNaN: true });
  const total = (e: number, n: number) => {
    const { direct, diffuse } = surfaceDaylight(e, n);
    return integrate(direct) + integrate(diffuse);
  };

  it("is the clear sky's own at 0 oktas, its direct beam laid on the horizontal", () => {
    const { direct, diffuse } = surfaceDaylight(40, 0);
    const bands = clearSkyBands(50);
    const at550 = bands.wavelength_nm.indexOf(550);
    expect(direct[34]).toBeCloseTo(bands.direct_normal[at550] * Math.sin((40 * Math.PI) / 180), 12);
    expect(diffuse[34]).toBeCloseTo(bands.diffuse_horizontal[at550], 12);
  });

  it("keeps the cloud's share of the whole, wavelength by wavelength, and never a negative part", () => {
    fc.assert(
      fc.property(elevation, oktas, (e, n) => {
        const clear = surfaceDaylight(e, 0);
        const cloudy = surfaceDaylight(e, n);
        cloudy.direct.forEach((direct, i) => {
          const whole = clear.direct[i] + clear.diffuse[i];
          expect(direct + cloudy.diffuse[i]).toBeCloseTo(whole * cloudTransmittance(n), 12);
          expect(direct).toBeGreaterThanOrEqual(0);
          expect(cloudy.diffuse[i]).toBeGreaterThanOrEqual(-1e-15);
        });
      }),
      { seed: 1980, numRuns: 30 },
    );
  });

  it("has no direct beam under a closed sky", () => {
    expect(Math.max(...surfaceDaylight(60, 8).direct)).toBe(0);
  });

  it("falls with cloud and rises with the sun", () => {
    fc.assert(
      fc.property(elevation, elevation, oktas, oktas, (e1, e2, n1, n2) => {
        const [low, high] = [Math.min(e1, e2), Math.max(e1, e2)];
        const [open, closed] = [Math.min(n1, n2), Math.max(n1, n2)];
        expect(total(low, closed)).toBeLessThanOrEqual(total(high, open) * (1 + 1e-12));
      }),
      { seed: 1981, numRuns: 30 },
    );
  });

  it("refuses a sun below 10 degrees, where the clear-sky model ends", () => {
    expect(() => surfaceDaylight(9.99, 0)).toThrow(RangeError);
    expect(() => surfaceDaylight(10, 0)).not.toThrow();
  });
});

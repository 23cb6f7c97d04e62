import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import { Y_BAR } from "../colour/observer.js";
import { surfaceDaylight } from "../daylight/surface-daylight.js";
import { LightSeen, Observers, SEEN_COUNT } from "../fast/light-seen.js";
import { filterTransmittance } from "../filter/transmittance.js";
import { meanSensor } from "../sensor/mean-sensor.js";
import { multiply, pathTransmittance } from "../spectrum/combine.js";
import { type Spectrum, spectrumFrom } from "../spectrum/grid.js";
import { integrateProduct, integrateTriple } from "../spectrum/integrate.js";
import { throughSurface } from "../surface/underwater-daylight.js";
import { kdFromChlorophyll } from "./chlorophyll-morel-maritorena-2001.js";
import { JERLOV_TYPES, jerlovKd } from "./jerlov-1976.js";
import { DepthLosses, type EqualDepths } from "./losses-over-depths.js";
import { kdUnderSun, waterFromKd } from "./water-optics.js";

const { red, green, blue } = meanSensor(0);
const QUANTA = spectrumFrom((nm) => (nm < 400 || nm > 700 ? 0 : nm === 400 || nm === 700 ? nm / 2 : nm));
const SENSITIVITIES = [red, green, blue, Y_BAR, QUANTA];
const OBSERVERS = new Observers(red, green, blue, Y_BAR, QUANTA);
const sunlight = (sun: number) => throughSurface(surfaceDaylight(sun, 1), sun, 5);

const losses = new DepthLosses();
function fast(light: Spectrum, kd: Spectrum, depths: EqualDepths, observers = OBSERVERS): Float64Array {
  const out = new Float64Array(depths.count * SEEN_COUNT);
  losses.setLight(light, observers);
  losses.over(kd, depths, out);
  return out;
}

/** The formula, with an exponential for each wavelength and depth. */
function plain(
  light: Spectrum,
  kd: Spectrum,
  { first_m, step_m, count }: EqualDepths,
  sensitivities = SENSITIVITIES,
): number[] {
  return Array.from({ length: count }, (_, n) => {
    const left = pathTransmittance(kd, first_m + n * step_m);
    return sensitivities.map((sensitivity) =>
      Math.log2(integrateProduct(light, sensitivity) / integrateTriple(light, left, sensitivity)),
    );
  }).flat();
}

function worst(a: ArrayLike<number>, b: ArrayLike<number>): number {
  return Array.from(a, (value, i) => Math.abs(value - b[i])).reduce((most, off) => Math.max(most, off), 0);
}

const depths = fc.record({
  first_m: fc.double({ min: 0, max: 20, noNaN: true }),
  step_m: fc.double({ min: 1e-3, max: 2, noNaN: true }),
  count: fc.integer({ min: 1, max: 120 }),
});

describe("losses over equally spaced depths", () => {
  it("are the formula's to 1e-6 stop in every water of the chlorophyll relation, under any sun", () => {
    fc.assert(
      fc.property(
        fc.double({ min: Math.log(0.02), max: Math.log(20), noNaN: true }),
        fc.integer({ min: 10, max: 90 }),
        depths,
        (ln, sun, at) => {
          const { downwelling, mu0 } = sunlight(sun);
          const kd = kdUnderSun(waterFromKd(kdFromChlorophyll(Math.exp(ln))), mu0);
          expect(worst(fast(downwelling, kd, at), plain(downwelling, kd, at))).toBeLessThan(1e-6);
        },
      ),
      { seed: 2001, numRuns: 150 },
    );
  });

  it.each(JERLOV_TYPES)("are the formula's to 1e-6 stop in type %s, behind a filter too", (type) => {
    const { downwelling, mu0 } = sunlight(50);
    const kd = kdUnderSun(waterFromKd(jerlovKd(type)), mu0);
    const behind = SENSITIVITIES.map((s) => multiply(s, filterTransmittance("red", 0.9)));
    const observers = new Observers(behind[0], behind[1], behind[2], behind[3], behind[4]);
    for (const at of [
      { first_m: 0, step_m: 1.5, count: 30 },
      { first_m: 2, step_m: 0.2, count: 300 },
      { first_m: 5, step_m: 2, count: 7 },
    ]) {
      expect(worst(fast(downwelling, kd, at), plain(downwelling, kd, at))).toBeLessThan(1e-6);
      const filtered = fast(downwelling, kd, at, observers);
      expect(worst(filtered, plain(downwelling, kd, at, behind))).toBeLessThan(1e-6);
    }
  });

  it("integrates at every depth where interpolation would not hold", () => {
    // No natural water: two windows so far apart that the change from one to the other is a sharp bend in the logarithm.
    const kd = spectrumFrom((nm) => (nm < 600 ? 9 : 0.01));
    const light = spectrumFrom((nm) => (nm < 600 ? 1 : 1e-12));
    const at = { first_m: 0.1, step_m: 0.15, count: 60 };
    expect(worst(fast(light, kd, at), plain(light, kd, at))).toBeLessThan(1e-9);
  });

  /** In how many passes, of two depths each, the light goes down. */
  function passes(light: Spectrum, kd: Spectrum, depths: EqualDepths): number {
    const down = vi.spyOn(LightSeen.prototype, "sumAtNextTwo");
    try {
      fast(light, kd, depths);
      return down.mock.calls.length;
    } finally {
      down.mockRestore();
    }
  }

  it.each(JERLOV_TYPES)(
    "are integrated at some twenty of many depths in type %s, which is what makes them fast",
    (type) => {
      const { downwelling, mu0 } = sunlight(50);
      const kd = kdUnderSun(waterFromKd(jerlovKd(type)), mu0);
      for (const count of [24, 120, 300]) {
        expect(passes(downwelling, kd, { first_m: 2, step_m: 20 / count, count })).toBe(10);
      }
      // Of few depths, each.
      expect(passes(downwelling, kd, { first_m: 2, step_m: 1, count: 23 })).toBe(12);
    },
  );

  it("are integrated once more at every depth where interpolation would not hold", () => {
    const kd = spectrumFrom((nm) => (nm < 600 ? 9 : 0.01));
    const light = spectrumFrom((nm) => (nm < 600 ? 1 : 1e-12));
    expect(passes(light, kd, { first_m: 0.1, step_m: 0.15, count: 60 })).toBe(10 + 30);
  });

  it("do not depend on how bright the light is, nor on what was worked out before", () => {
    const { downwelling, mu0 } = sunlight(35);
    const kd = kdUnderSun(waterFromKd(jerlovKd("IB")), mu0);
    const at = { first_m: 3, step_m: 0.5, count: 40 };
    const once = Array.from(fast(downwelling, kd, at));
    fast(downwelling, jerlovKd("9C"), { first_m: 1, step_m: 1, count: 12 });
    expect(
      worst(
        fast(
          downwelling.map((e) => e * 1024),
          kd,
          at,
        ),
        once,
      ),
    ).toBeLessThan(1e-12);
    expect(Array.from(fast(downwelling, kd, at))).toEqual(once);
  });
});

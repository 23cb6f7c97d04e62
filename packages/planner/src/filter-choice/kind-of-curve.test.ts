import { FILTER_KINDS, filterTransmittance, WAVELENGTHS_NM } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { kindOfCurve } from "./kind-of-curve.js";

const samples = (curve: ArrayLike<number>) =>
  Array.from(WAVELENGTHS_NM, (wavelength_nm, i) => ({ wavelength_nm, transmittance: curve[i] }));

describe("what a measured filter is called", () => {
  it.each(FILTER_KINDS)("%s, where it is one of any density, its edge a little elsewhere", (kind) => {
    // From the weakest that is sold to the densest.
    for (const density of [0.05, 0.1, 0.3, 0.55, 0.9, 1.6, 3]) {
      for (const shift_nm of density < 0.3 ? [0] : [-10, 0, 10]) {
        expect(kindOfCurve(samples(filterTransmittance(kind, density, { shift_nm })))).toBe(kind);
      }
    }
  });

  it("by what it holds back, from a few samples", () => {
    const of = (...points: [number, number][]) =>
      kindOfCurve(points.map(([wavelength_nm, transmittance]) => ({ wavelength_nm, transmittance })));
    expect(of([450, 0.25], [550, 0.3], [650, 0.9])).toBe("red");
    expect(of([400, 0.8], [490, 0.6], [540, 0.2], [600, 0.6], [700, 0.85])).toBe("magenta");
    expect(of([400, 0.9], [550, 0.85], [620, 0.3], [700, 0.25])).toBe("blue");
    expect(of([400, 0.1], [520, 0.8], [560, 0.8], [640, 0.1])).toBe("green");
    expect(of([400, 0.5], [700, 0.5])).toBe("neutral");
  });

  it("whatever it does beyond red: dyes let infrared through", () => {
    for (const kind of FILTER_KINDS) {
      const leaking = filterTransmittance(kind, 0.6).map((t, i) => (WAVELENGTHS_NM[i] > 700 ? 0.92 : t));
      const tight = leaking.map((t, i) => (WAVELENGTHS_NM[i] > 700 ? 0 : t));
      expect([kindOfCurve(samples(leaking)), kindOfCurve(samples(tight))]).toEqual([kind, kind]);
    }
  });
});

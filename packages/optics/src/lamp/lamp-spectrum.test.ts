import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cctDuv } from "../colour/cct-duv.js";
import { LED_NAMES, ledIlluminant } from "../colour/led-illuminants.js";
import { chromaticity, illuminance_lx, xyzOf } from "../colour/observer.js";
import { perLumen } from "../colour/per-lumen.js";
import { whiteLampPerLumen } from "./lamp-spectrum.js";

const cctOf = (spectrum: Float64Array) => {
  const { x, y } = chromaticity(xyzOf(spectrum));
  return cctDuv(x, y);
};

describe("white lamps", () => {
  // CIE 15:2018, Table 12.
  it.each([
    ["LED-B1", 2733],
    ["LED-B2", 2998],
    ["LED-B3", 4103],
    ["LED-B4", 5109],
    ["LED-B5", 6598],
    ["LED-BH1", 2851],
    ["LED-RGB1", 2840],
    ["LED-V1", 2724],
    ["LED-V2", 4070],
  ] as const)(
    "%s has a correlated colour temperature of %d K within 0.2 %% (CIE 15:2018, Table 12)",
    (name, cct) => {
      expect(Math.abs((cctOf(ledIlluminant(name)).cct_K ?? 0) / cct - 1)).toBeLessThan(2e-3);
    },
  );

  it("has every LED illuminant of that table", () => {
    expect(LED_NAMES.length).toBe(9);
  });

  // The bounds are judgements: 1 % is about a mired at 10 000 K, and ANSI C78.377 lets white LEDs lie as far off (from memory).
  it("have the colour temperature asked for within 1 %, and lie near the locus, from 1800 to 20 000 K", () => {
    for (let mired = 50; mired <= 555; mired += 5) {
      const { cct_K, duv } = cctOf(whiteLampPerLumen(1e6 / mired));
      expect(Math.abs((cct_K ?? 0) / (1e6 / mired) - 1)).toBeLessThan(0.01);
      expect(Math.abs(duv)).toBeLessThan(0.006);
    }
  });

  it("give one lumen", () => {
    fc.assert(
      fc.property(fc.double({ min: 1500, max: 25000, noNaN: true }), (cct) => {
        expect(illuminance_lx(whiteLampPerLumen(cct))).toBeCloseTo(1, 10);
      }),
      { seed: 2018, numRuns: 50 },
    );
    expect(illuminance_lx(perLumen(ledIlluminant("LED-B4")))).toBeCloseTo(1, 12);
  });

  it.each([
    ["LED-B1", 2733],
    ["LED-B3", 4103],
    ["LED-B5", 6598],
  ] as const)("are the table's own %s at its own temperature, also at the ends", (name, cct_K) => {
    const own = perLumen(ledIlluminant(name));
    whiteLampPerLumen(cct_K).forEach((v, i) => {
      expect(v).toBeCloseTo(own[i], 14);
    });
  });
});

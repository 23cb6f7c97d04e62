import { describe, expect, it } from "vitest";
import { flatPortMagnification } from "../mounting/flat-port.js";
import { portTransmittance } from "./port-transmittance.js";

describe("radiance through a port", () => {
  it("out of sea water without a window is 0.543 of that in it (Voss & Flora 2017, J. Atmos. Oceanic Technol. 34, 1203)", () => {
    expect(portTransmittance(1.34, 1.34)).toBeCloseTo(0.543, 2);
  });

  // Ocean Optics Protocols, after Austin 1976: F = n (n + g)^2 / (1 + g)^2 for a window of index g; formula from memory. Data
  // sheets of in-water radiometers behind silica have 1.758 at 412 nm to 1.731 at 670 nm.
  it.each([
    [1.468, 1.3505, 1.758],
    [1.463, 1.3435, 1.746],
    [1.456, 1.3355, 1.731],
  ])(
    "behind silica of index %d in water of %d gives the radiometers' immersion factor %d",
    (g, n, factor) => {
      const inAir = (1 - ((g - 1) / (g + 1)) ** 2) ** 2;
      const immersion = inAir / portTransmittance(g, n);
      expect(immersion).toBeCloseTo((n * (n + g) ** 2) / (1 + g) ** 2, 12);
      expect(Math.abs(immersion / factor - 1)).toBeLessThan(0.005);
    },
  );

  it("loses what the larger picture spreads, and two reflections: 0.9 stop (law of the magnification squared)", () => {
    const spread = 2 * Math.log2(flatPortMagnification());
    const loss_stops = -Math.log2(portTransmittance());
    expect(loss_stops).toBeGreaterThan(spread);
    // An uncoated surface of glass reflects about 4 % in air (Hecht, Optics, Fresnel at normal incidence), in water 0.3 %.
    expect(loss_stops - spread).toBeCloseTo(-Math.log2(0.96 * 0.997), 2);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daylightFromTable } from "./daylight-table.js";
import { surfaceDaylight } from "./surface-daylight.js";

describe("daylight from the table", () => {
  it("is the formula's, to 1e-9 of the whole light, under any sun and cloud (Bird & Riordan 1986)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (sun, oktas) => {
          const formula = surfaceDaylight(sun, oktas);
          const table = daylightFromTable(sun, oktas);
          table.direct.forEach((direct, i) => {
            const whole = formula.direct[i] + formula.diffuse[i];
            expect(Math.abs(direct - formula.direct[i])).toBeLessThan(1e-9 * whole);
            expect(Math.abs(table.diffuse[i] - formula.diffuse[i])).toBeLessThan(1e-9 * whole);
          });
        },
      ),
      { seed: 1986, numRuns: 300 },
    );
  });

  it("reaches both ends of the domain and refuses what lies beyond, as the formula does", () => {
    for (const sun of [10, 90]) {
      expect(daylightFromTable(sun, 0).direct[34]).toBeCloseTo(surfaceDaylight(sun, 0).direct[34], 10);
    }
    for (const sun of [9.99, 90.01, Number.NaN]) {
      expect(() => daylightFromTable(sun, 0)).toThrow(RangeError);
      expect(() => daylightFromTable(sun, 0)).toThrow(`${sun} degrees is outside 10 to 90`);
    }
  });

  it("writes into what it is given", () => {
    const out = { direct: new Float64Array(81), diffuse: new Float64Array(81) };
    expect(daylightFromTable(45, 3, out)).toBe(out);
    expect(out).toEqual(daylightFromTable(45, 3));
  });
});

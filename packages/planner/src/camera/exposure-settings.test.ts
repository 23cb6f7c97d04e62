import { daylightScene } from "@sunfathom/fixtures/scenes";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { limitsOf, settingsFor } from "./exposure-settings.js";

const limits = limitsOf(daylightScene("IB", 45, 5));
/** Product of ISO, shutter time and 1/N^2. */
const product = ({ iso, f_number, shutter_s }: { iso: number; f_number: number; shutter_s: number }) =>
  (iso * shutter_s) / f_number ** 2;

describe("settings within a camera's limits", () => {
  it("open the aperture first and raise ISO only when it is wide open (common practice, no published source)", () => {
    expect(settingsFor(product({ iso: 200, f_number: 8, shutter_s: 0.02 }), limits)).toMatchObject({
      iso: 200,
      off_by_stops: 0,
      at_lowest_iso: true,
    });
    expect(settingsFor(product({ iso: 800, f_number: 2.8, shutter_s: 0.02 }), limits)).toMatchObject({
      f_number: 2.8,
      off_by_stops: 0,
      at_lowest_iso: false,
    });
  });

  it("give the wanted product, or say by how many stops they miss it, and never leave the limits", () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 12, noNaN: true }), (log2) => {
        const wanted = 2 ** log2;
        const set = settingsFor(wanted, limits);
        expect(Math.log2(product(set) / wanted)).toBeCloseTo(set.off_by_stops, 9);
        expect(set.iso).toBeGreaterThanOrEqual(200);
        expect(set.iso).toBeLessThanOrEqual(3200);
        expect(set.f_number).toBeGreaterThanOrEqual(2.8 - 1e-12);
        expect(set.f_number).toBeLessThanOrEqual(16);
        expect(set.shutter_s).toBe(0.02);
        if (set.iso > 200 + 1e-9) expect(set.f_number).toBe(2.8);
        expect(set.at_lowest_iso).toBe(set.iso === 200);
        if (set.off_by_stops < 0) expect([set.iso, set.f_number]).toEqual([3200, 2.8]);
        if (set.off_by_stops > 0) expect([set.iso, set.f_number]).toEqual([200, 16]);
      }),
      { seed: 2720, numRuns: 200 },
    );
  });

  it("keep what the diver has fixed", () => {
    const fixed = limitsOf({ ...daylightScene("IB", 45, 5), iso: 400, f_number: 5.6 });
    for (const wanted of [1e-4, 1, 1e4]) {
      const { iso, f_number, off_by_stops } = settingsFor(wanted, fixed);
      expect([iso, f_number]).toEqual([400, 5.6]);
      expect(off_by_stops).toBeCloseTo(Math.log2((400 * 0.02) / 5.6 ** 2 / wanted), 10);
    }
  });
});

import { describe, expect, it } from "vitest";
import { dialFNumber, dialIso, dialShutter, settings } from "./dial.js";

describe("settings as on a dial", () => {
  it("gives the nearest third of a stop of ISO speed (ISO 12232 series)", () => {
    expect([100, 103, 289, 548, 3200, 12800].map(dialIso)).toEqual([
      "100",
      "100",
      "320",
      "500",
      "3200",
      "12500",
    ]);
    expect([50, 25, 925].map(dialIso)).toEqual(["50", "25", "1000"]);
  });

  it("gives the nearest engraved f-number (ISO 517 series, in thirds)", () => {
    expect([2.8, 3.9, 7.2, 13.6, 14.9].map(dialFNumber)).toEqual(["2.8", "4", "7.1", "14", "14"]);
    expect([0.5, 0.64, 0.66, 69, 90].map(dialFNumber)).toEqual(["0.5", "0.6", "0.7", "64", "90.0"]);
  });

  it("is never farther off than half a third of a stop, a little more where the series are rounded", () => {
    for (let iso = 25; iso < 400000; iso *= 1.013) {
      expect(Math.abs(Math.log2(Number(dialIso(iso)) / iso))).toBeLessThan(0.25);
    }
    for (let f = 0.7; f < 64; f *= 1.007) {
      expect(2 * Math.abs(Math.log2(Number(dialFNumber(f)) / f))).toBeLessThan(0.25);
    }
  });

  it("says times as fractions or seconds", () => {
    expect([0.02, 1 / 494, 1, 2].map(dialShutter)).toEqual(["1/50 s", "1/494 s", "1.0 s", "2.0 s"]);
  });

  it("says ISO and aperture together", () => {
    expect(settings({ iso: 548, f_number: 3.9 })).toBe("ISO 500 at f/4");
  });
});

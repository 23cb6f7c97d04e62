import { describe, expect, it } from "vitest";
import { waysOut } from "./ways-out.js";
import { waysToPay } from "./ways-to-pay.js";

describe("a way to pay", () => {
  it("tells settings as they stand on a dial", () => {
    expect(waysToPay.wide_open({ f_number: 2.8, iso: 803 })).toBe("Aperture wide open at f/2.8: ISO 800.");
    // Half a stop beyond f/5.6: dials have f/6.3 nearest to it.
    expect(waysToPay.close_aperture({ f_number: 6.66, enough: false })).toBe(
      "Close the aperture to f/6.3, as far as it goes: not enough alone.",
    );
    expect(waysToPay.close_aperture({ f_number: 11.1, enough: true })).toBe("Close the aperture to f/11.");
  });

  it("asks for no more of a sun than it may give", () => {
    const sun = { elevation_deg: 61.7, gains_stops: 0.62 };
    expect(waysToPay.wait_for_sun(sun)).toMatch(/^Wait until the sun stands 62 degrees high that day/);
    expect(waysToPay.if_sun_rises(sun)).toMatch(/^If the sun comes to stand 62 degrees high there/);
  });
});

describe("a way out", () => {
  it("says of a filter on the lamps whether what it leaves is seen", () => {
    const p = { red: 0.2, green: 0.8, blue: 1, kind: "blue", density: 0.9 } as const;
    expect(waysOut.lamp_filter({ ...p, is_seen: true })).toContain("still leaves a visible split");
    expect(waysOut.lamp_filter({ ...p, is_seen: false })).not.toContain("visible split");
  });
});

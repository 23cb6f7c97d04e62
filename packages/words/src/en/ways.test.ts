import { describe, expect, it } from "vitest";
import { waysOut } from "./ways-out.js";
import { waysToPay } from "./ways-to-pay.js";

describe("a way to pay", () => {
  it("tells settings as they stand on a dial", () => {
    expect(waysToPay.wide_open({ f_number: 2.8, iso: 803 })).toMatch(/f\/2\.8\b.*ISO 800\b/);
    // Half a stop beyond f/5.6: dials have f/6.3 nearest to it.
    const [short, enough] = [
      waysToPay.close_aperture({ f_number: 6.66, enough: false }),
      waysToPay.close_aperture({ f_number: 6.66, enough: true }),
    ];
    expect(short).toContain("f/6.3");
    expect(enough).toContain("f/6.3");
    expect(enough).not.toBe(short);
  });

  it("asks for no more of a sun than it may give", () => {
    const sun = { elevation_deg: 61.7, gains_stops: 0.62 };
    expect(waysToPay.wait_for_sun(sun)).toMatch(/62 degrees.*⅔ stop/);
    expect(waysToPay.if_sun_rises(sun)).not.toBe(waysToPay.wait_for_sun(sun));
    expect(waysToPay.if_sun_rises(sun)).toMatch(/62 degrees.*⅔ stop/);
  });
});

describe("a way out", () => {
  it("says of a filter on the video lights whether what it leaves is seen", () => {
    const p = { red: 0.2, green: 0.8, blue: 1, kind: "blue", density: 0.9 } as const;
    expect(waysOut.lamp_filter({ ...p, is_seen: true })).not.toBe(
      waysOut.lamp_filter({ ...p, is_seen: false }),
    );
  });
});

import { expect, it } from "vitest";
import { lightReasons } from "./light.js";

it("the sun stands at a time that is told to the minute, in UTC", () => {
  const text = lightReasons.sun_stands({
    elevation_deg: 61.2,
    azimuth_deg: 181.4,
    time: "2026-06-21T11:07:30.000Z",
  });
  expect(text).toMatch(/2026-06-21 11:07 UTC.*61 degrees.*181 degrees/);
  expect(lightReasons.clock_shows_twice({ time: "2026-10-25T00:30:00.000Z" })).toContain(
    "2026-10-25 00:30 UTC",
  );
});

it("a distance from the locus is told with its side", () => {
  expect(lightReasons.cct_without_meaning({ depth_m: 5, duv: -0.0612 })).toContain("Duv -0.061");
});

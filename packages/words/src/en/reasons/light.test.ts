import { expect, it } from "vitest";
import { lightReasons } from "./light.js";

it("the sun stands at a time that is told to the minute, in UTC", () => {
  const text = lightReasons.sun_stands({
    elevation_deg: 61.2,
    azimuth_deg: 181.4,
    time: "2026-06-21T11:07:30.000Z",
  });
  expect(text).toBe(
    "At 2026-06-21 11:07 UTC the sun stands 61 degrees above the horizon there, at 181 degrees from north.",
  );
  expect(lightReasons.clock_shows_twice({ time: "2026-10-25T00:30:00.000Z" })).toContain(
    "2026-10-25 00:30 UTC",
  );
});

it("a distance from the locus has no sign", () => {
  expect(lightReasons.cct_without_meaning({ depth_m: 5, duv: -0.0612 })).toContain(
    "From 5.0 m the light lies 0.061 from the Planckian locus",
  );
});

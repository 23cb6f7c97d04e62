import { expect, it } from "vitest";
import { lightReasons } from "./light.js";

it("the sun stands at a time that is told to the minute, by the clock there where it is known, else in UTC", () => {
  const stands = { elevation_deg: 61.2, azimuth_deg: 181.4, time: "2026-06-21T11:07:30.000Z" };
  expect(lightReasons.sun_stands(stands)).toMatch(/2026-06-21 11:07 UTC.*61 degrees.* south\./);
  const there = lightReasons.sun_stands({ ...stands, azimuth_deg: 340, local: { time: "2026-06-21T13:07" } });
  expect(there).toMatch(/13:07 local time.* north\./);
  expect(there).not.toContain("UTC");
  expect(lightReasons.clock_shows_twice({ time: "2026-10-25T00:30:00.000Z" })).toContain(
    "2026-10-25 00:30 UTC",
  );
});

it("a light without a colour temperature is told with its depth, and with no figure that nobody sets", () => {
  const text = lightReasons.cct_without_meaning({ depth_m: 5, duv: -0.0612 });
  expect(text).toContain("5 m");
  expect(text).not.toContain("061");
});

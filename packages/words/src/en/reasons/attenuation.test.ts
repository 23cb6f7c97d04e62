import { expect, it } from "vitest";
import { attenuationReasons } from "./attenuation.js";

it("losses are told to a tenth of a stop, the deepest one with its depth", () => {
  const lost = { red_stops: 3.04, green_stops: 0.96, blue_stops: 0.51, depth_m: 12 };
  expect(attenuationReasons.red_goes_first(lost)).toBe(
    "At 12.0 m this water has taken 3.0 stops from the red channel, 1.0 from green and 0.5 from blue.",
  );
});

it("the slant of the light is told to a hundredth", () => {
  expect(attenuationReasons.sun_path({ mu0: 0.8312 })).toContain("the mean path cosine is 0.83,");
});

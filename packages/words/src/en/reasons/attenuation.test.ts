import { expect, it } from "vitest";
import { attenuationReasons } from "./attenuation.js";

it("losses are told to a third of a stop, the deepest one with its depth", () => {
  const lost = { red_stops: 3.04, green_stops: 0.96, blue_stops: 0.51, depth_m: 12 };
  expect(attenuationReasons.red_goes_first(lost)).toMatch(/12 m.*red.* 3 stops.*green 1 stop .*blue ⅔ stop/);
});

it("the slant of the light is told to a hundredth", () => {
  expect(attenuationReasons.sun_path({ mu0: 0.8312 })).toContain("0.83");
});

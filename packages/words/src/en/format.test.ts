// Guards how numbers are said: their rounding, their words and where these change.
import { expect, it } from "vitest";
import { en } from "../cldr/en.js";
import { formatsOf } from "../numbers/formats.js";
import { lengthsOf } from "../numbers/lengths.js";
import {
  atDepths,
  brightness,
  castOf,
  densityOf,
  depth,
  depthNumber,
  depths,
  distance,
  errorFall,
  howOften,
  kelvin,
  lumens,
  near,
  neutral,
  redder,
  shown,
  stops,
} from "./format.js";

it("numbers have the decimals asked for, and zero no sign", () => {
  expect([shown(1.25), shown(2.5, 1), shown(2.04, 1), shown(-1.26, 1)]).toEqual(["1", "2.5", "2.0", "-1.3"]);
  expect([shown(-0.04, 1), shown(-0.4), shown(0, 2), shown(-0.05, 1)]).toEqual(["0.0", "0", "0.00", "-0.1"]);
});

it("depths are one or a range", () => {
  expect(atDepths(5, 5.2)).toBe("At 5 m");
  expect(atDepths(5, 18.25)).toBe("From 5 to 18 m");
});

it("a depth is told to 1 m, to 0.5 m where shallower than 5 m", () => {
  expect([0.3, 1.2, 4.74, 4.8, 5.4, 18.5].map((depth_m) => depthNumber(depth_m))).toEqual([
    "0.5",
    "1",
    "4.5",
    "5",
    "5",
    "19",
  ]);
});

it("depths are said as a diver can hit them, each and their unit once", () => {
  expect(depths([3.4, 7.68, 9.14, 9.4])).toBe("3.5, 8 and 9 m");
  expect(depths([5])).toBe("5 m");
});

// 1 ft is 0.3048 m and 1 in 25.4 mm, exactly (NIST Special Publication 811, 2008, appendix B.8).
it("lengths are told in feet and inches where they are asked for, as a diver reads them off", () => {
  expect([0.3, 3, 18, 30.48].map((depth_m) => depth(depth_m, "imperial"))).toEqual([
    "1 ft",
    "10 ft",
    "59 ft",
    "100 ft",
  ]);
  expect(atDepths(5, 18.25, "imperial")).toBe("From 16 to 60 ft");
  expect(depths([5, 5.1, 7.62], "imperial")).toBe("16, 17 and 25 ft");
  expect([0.508, 0.9, 1.2, 1.22, 25].map((distance_m) => distance(distance_m, "imperial"))).toEqual([
    "20 in",
    "35 in",
    "4 ft",
    "4 ft",
    "82 ft",
  ]);
  expect([63.5, 254].map((distance_mm) => near(distance_mm, "imperial"))).toEqual(["2.5 in", "10 in"]);
});

it("lengths are what the rules of all languages make of them", () => {
  const rules = lengthsOf(formatsOf(en));
  for (const units of ["metric", "imperial"] as const)
    for (let length_m = 0.02; length_m < 130; length_m *= 1.01) {
      expect(depth(length_m, units)).toBe(rules.depth(length_m, units));
      expect(distance(length_m, units)).toBe(rules.distance(length_m, units));
      expect(near(10 * length_m, units)).toBe(rules.near(10 * length_m, units));
    }
});

it("stops are told in thirds, and never as none", () => {
  expect([0.1, 0.33, 0.8, 1, 1.3, 2.7, 2].map(stops)).toEqual([
    "less than ⅓ stop",
    "⅓ stop",
    "⅔ stop",
    "1 stop",
    "1⅓ stops",
    "2⅔ stops",
    "2 stops",
  ]);
});

it("densities are told as they stand on filters, ND with its stops (a stop is a density of log10 2)", () => {
  expect([0.6, 0.45, 1, 1.05].map(densityOf)).toEqual(["0.6", "0.45", "1.0", "1.05"]);
  expect([0.3, 0.9, 1.2].map(neutral)).toEqual([
    "an ND of density 0.3 (1 stop)",
    "an ND of density 0.9 (3 stops)",
    "an ND of density 1.2 (4 stops)",
  ]);
});

it("colour errors are ranked in words, and so is their fall, where a rank is crossed", () => {
  expect([2, 8, 14].map(castOf)).toEqual(["a slight cast", "a noticeable cast", "a strong cast"]);
  expect(errorFall(16, 4)).toBe("takes the colour error from strong to slight");
  expect(errorFall(10, 8)).toContain("about 20 % (it stays noticeable)");
  expect(errorFall(10, 9.9)).toBe("cuts the colour error a little (it stays noticeable)");
});

it("a count is said as one says it", () => {
  expect([1, 2, 3, 12].map(howOften)).toEqual(["once", "twice", "3 times", "12 times"]);
});

it("kelvin are told to the hundred, lumens to two figures", () => {
  expect([5649, 5650, 10_049].map(kelvin)).toEqual(["5600", "5700", "10000"]);
  expect([4049, 1251, 96, 7.34].map(lumens)).toEqual(["4000", "1300", "96", "7"]);
});

it("one light is redder than another, greener, or neither where less than a third of a stop tells them apart", () => {
  expect(new Set([0, 0.16, -0.16].map(redder))).toHaveLength(1);
  expect(redder(0.34)).toMatch(/⅓ stop .*red/);
  expect(redder(-1.26)).toMatch(/1⅓ stops .*green/);
});

it("a brightness is told as finely as it is known: times where it is far more, else tens of percent", () => {
  expect([1327, 150, 149, 64, 13, 7.4, 0.3].map(brightness)).toEqual([
    "13 times",
    "2 times",
    "150 %",
    "60 %",
    "10 %",
    "7 %",
    "under 1 %",
  ]);
});

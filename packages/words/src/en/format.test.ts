// Guards how numbers are said: their rounding, their words and where these change.
import { expect, it } from "vitest";
import {
  atDepths,
  castOf,
  densityOf,
  errorFall,
  howOften,
  kelvin,
  lumens,
  metres,
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
  expect([0.3, 1.2, 4.74, 4.8, 5.4, 18.5].map(metres)).toEqual(["0.5", "1", "4.5", "5", "5", "19"]);
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

it("colour errors are ranked in words, and their fall in per cent", () => {
  expect([2, 8, 14].map(castOf)).toEqual(["a slight cast", "a clear cast", "a strong cast"]);
  expect(errorFall(16, 4)).toBe("cuts the colour error by 75 % (from strong to slight)");
  expect(errorFall(10, 8)).toContain("20 % (it stays clear)");
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

// Guards how numbers are said: their rounding, their words and where these change.
import { expect, it } from "vitest";
import { atDepths, howOften, kelvin, lumens, redder, shown } from "./format.js";

it("numbers have the decimals asked for, and zero no sign", () => {
  expect([shown(1.25), shown(2.5, 1), shown(2.04, 1), shown(-1.26, 1)]).toEqual(["1", "2.5", "2.0", "-1.3"]);
  expect([shown(-0.04, 1), shown(-0.4), shown(0, 2), shown(-0.05, 1)]).toEqual(["0.0", "0", "0.00", "-0.1"]);
});

it("depths are one or a range", () => {
  expect(atDepths(5, 5)).toBe("At 5.0 m");
  expect(atDepths(5, 18.25)).toBe("Over 5.0 to 18.3 m");
});

it("a count is said as one says it", () => {
  expect([1, 2, 3, 12].map(howOften)).toEqual(["once", "twice", "3 times", "12 times"]);
});

it("kelvin are told to the hundred, lumens to two figures", () => {
  expect([5649, 5650, 10_049].map(kelvin)).toEqual(["5600", "5700", "10000"]);
  expect([4049, 1251, 96, 7.34].map(lumens)).toEqual(["4000", "1300", "96", "7"]);
});

it("one light is redder than another, less red, or as red where a twentieth of a stop tells them apart", () => {
  expect([0, 0.049, -0.049].map(redder)).toEqual(Array(3).fill("as red against green"));
  expect(redder(0.05)).toBe("0.1 stops more red against green");
  expect(redder(1.26)).toBe("1.3 stops more red against green");
  expect(redder(-1.26)).toBe("1.3 stops less red against green");
});

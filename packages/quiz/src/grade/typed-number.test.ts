import { describe, expect, it } from "vitest";
import { readNumber } from "./typed-number.js";

describe("a number as typed", () => {
  // Decimal comma and point: ISO 80000-1, 7.2.2. A thin space sets thousands off: the same, 7.3.1.
  it.each([
    ["3.5", "stops", 3.5],
    ["3,5", "stops", 3.5],
    [" 3,5 stops ", "stops", 3.5],
    ["1 stop", "stops", 1],
    ["2 EV", "stops", 2],
    ["-1.2", "stops", -1.2],
    ["\u22121,2", "mired", -1.2],
    ["+12 mired", "mired", 12],
    ["5 600 K", "K", 5600],
    ["5\u202f600", "K", 5600],
    ["5600 kelvin", "K", 5600],
    ["0,048", "", 0.048],
    [".48", "", 0.48],
    [",48", "", 0.48],
    ["ISO 640", "", 640],
    ["1.250", "", 1.25],
    ["2.5 metres", "m", 2.5],
    ["about 3", "m", 3],
    ["3,5 pasos", "stops", 3.5],
    ["1 paso", "stops", 1],
    ["unos 3 metros", "m", 3],
    ["48,5 grados", "°", 48.5],
    ["densidad 0,3", "", 0.3],
  ])("%s in %s is %d", (typed, unit, value) => {
    expect(readNumber(typed, unit)).toEqual({ value });
  });

  it.each([
    ["1,250", "", "number_ambiguous"],
    ["1,250.5", "", "number_ambiguous"],
    ["3 ft", "m", "other_unit"],
    ["30 mm", "m", "other_unit"],
    ["50 %", "stops", "other_unit"],
    ["3 stops", "", "other_unit"],
    ["3e2", "", "other_unit"],
    ["two", "stops", "not_a_number"],
    ["Infinity", "stops", "not_a_number"],
    ["-", "stops", "not_a_number"],
  ])("%s in %s is refused: %s", (typed, unit, hint) => {
    expect(readNumber(typed, unit)).toMatchObject({ hint: { case: hint } });
  });

  // In Spanish a point may set thousands off (CLDR), and in some countries a comma.
  it.each(["1.250", "1,250"])("%s may be more than a thousand in Spanish", (typed) => {
    expect(readNumber(typed, "", [".", ","])).toMatchObject({ hint: { case: "number_ambiguous" } });
    expect(readNumber("0.250", "", [".", ","])).toEqual({ value: 0.25 });
  });
});

import { GRID_SIZE, WAVELENGTHS_NM } from "@sunfathom/optics";
import { expect, it } from "vitest";
import { redDownTo_m } from "./red-depths.js";

const even = new Float64Array(GRID_SIZE).fill(1);

it("is ln(1 / share) over Kd where Kd is the same at all wavelengths (Beer's law)", () => {
  const kd = even.map(() => 0.4);
  const tenth = redDownTo_m(even, kd, 0.1);
  const hundredth = redDownTo_m(even, kd, 0.01, tenth);
  expect(tenth).toBeCloseTo(Math.log(10) / 0.4, 6);
  expect(hundredth).toBeCloseTo(Math.log(100) / 0.4, 6);
});

it("asks for 600 to 700 nm alone: what other light does bears on nothing", () => {
  const outside = (inside: number, other: number) =>
    WAVELENGTHS_NM.map((nm) => (nm < 600 || nm > 700 ? other : inside));
  const kd = WAVELENGTHS_NM.map((nm) => 0.2 + (nm - 600) / 250);
  expect(redDownTo_m(outside(1, 50), kd, 0.1)).toEqual(redDownTo_m(even, kd, 0.1));
  expect(redDownTo_m(even, outside(0.3, 9), 0.5)).toEqual(
    redDownTo_m(
      even,
      even.map(() => 0.3),
      0.5,
    ),
  );
});

it("finds its way where Kd varies a hundredfold over the band: what is left there is the share", () => {
  const kd = WAVELENGTHS_NM.map((nm) => (nm <= 600 ? 0.05 : 5));
  // Half a cell of twenty passes: 1/40 of red, which is down to a hundredth where that is down to 0.4.
  const hundredth = redDownTo_m(even, kd, 0.01);
  expect(hundredth).toBeCloseTo(Math.log(1 / 0.4) / 0.05, 5);
});

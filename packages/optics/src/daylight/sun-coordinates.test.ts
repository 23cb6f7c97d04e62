import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { sunCoordinates } from "./sun-coordinates.js";

// The worked example of Reda & Andreas 2004, NREL/TP-560-34302, table A5.1.
const csv = readFileSync(new URL("../../tables/nrel_spa_worked_example.csv", import.meta.url), "utf8");
const value = (name: string): number => Number(new RegExp(`^${name},([^,]+)`, "m").exec(csv)?.[1]);

it("gives the intermediates of the NREL worked example within 1e-3 degree", () => {
  const sun = sunCoordinates(new Date("2003-10-17T12:30:30-07:00"));
  expect(Math.abs(sun.longitude_deg - value("lambda_apparent_sun_longitude"))).toBeLessThan(1e-3);
  expect(Math.abs(sun.declination_deg - value("delta_declination"))).toBeLessThan(1e-3);
  const hourAngle = sun.greenwich_hour_angle_deg + value("longitude");
  expect(Math.abs(hourAngle - value("H_hour_angle"))).toBeLessThan(1e-3);
});

it.each([
  // Meeus 1998, Astronomical Algorithms, 2nd edition, example 25.a (by the higher accuracy): 13 October 1992, 0h of dynamical
  // time, which clocks showed 59 s earlier. From memory.
  ["1992-10-12T23:59:01Z", 199 + 54 / 60 + 21.818 / 3600, -(7 + 47 / 60 + 1.74 / 3600)],
])(
  "gives the apparent longitude and declination of a textbook: %s",
  (time, longitude_deg, declination_deg) => {
    const sun = sunCoordinates(new Date(time));
    expect(Math.abs(sun.longitude_deg - longitude_deg)).toBeLessThan(1e-3);
    expect(Math.abs(sun.declination_deg - declination_deg)).toBeLessThan(1e-3);
  },
);

it("crosses the equator and turns back when almanacs say so", () => {
  // Equinoxes and solstices of 2026 to the minute (general almanacs, from memory): longitude 0, 90, 180 and 270 degrees.
  for (const [time, longitude_deg] of [
    ["2026-03-20T14:46Z", 0],
    ["2026-06-21T08:24Z", 90],
    ["2026-09-23T00:05Z", 180],
    ["2026-12-21T20:50Z", 270],
  ] as const) {
    const off = ((sunCoordinates(new Date(time)).longitude_deg - longitude_deg + 540) % 360) - 180;
    expect(Math.abs(off), time).toBeLessThan(2e-3);
  }
});

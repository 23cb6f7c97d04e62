import { readFileSync } from "node:fs";
import * as Astronomy from "astronomy-engine";
import { getSpa } from "nrel-spa";
import { describe, expect, it } from "vitest";
import { OpticsDomainError } from "../domain-error.js";
import { refraction_deg, sunPosition } from "./sun-position.js";

// The worked example of Reda & Andreas 2004, NREL/TP-560-34302, table A5.1, with every intermediate.
const csv = readFileSync(new URL("../../tables/nrel_spa_worked_example.csv", import.meta.url), "utf8");
const published = new Map(
  csv
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => [line.split(",")[0], Number(line.split(",")[1])] as const),
);
const value = (name: string): number => published.get(name)!;
const instant = new Date("2003-10-17T12:30:30-07:00");
const place = { latitude_deg: value("latitude"), longitude_deg: value("longitude") };

describe("position of the sun, against the NREL worked example", () => {
  it("gives elevation and azimuth within 1e-3 degree", () => {
    const sun = sunPosition(place, instant);
    expect(Math.abs(sun.elevation_unrefracted_deg - value("e0_elevation_uncorrected"))).toBeLessThan(1e-3);
    expect(Math.abs(90 - sun.elevation_unrefracted_deg - value("zenith_uncorrected"))).toBeLessThan(1e-3);
    expect(Math.abs(sun.azimuth_deg - value("azimuth_from_north"))).toBeLessThan(1e-3);
  });

  it("gives the published refraction for the published air", () => {
    const lifted = value("e_elevation_corrected") - value("e0_elevation_uncorrected");
    const computed = refraction_deg(
      value("e0_elevation_uncorrected"),
      value("pressure"),
      value("temperature"),
    );
    expect(computed).toBeCloseTo(lifted, 6);
    expect(90 - value("e0_elevation_uncorrected") - computed).toBeCloseTo(value("zenith_corrected"), 5);
  });
});

describe("position of the sun, against a second library", () => {
  const places = [
    [0, 0],
    [27.9, 34.3],
    [-8.7, 115.5],
    [62.1, 6.5],
    [-17.5, -149.8],
    [-54.8, -68.3],
    [78.2, 15.6],
    [20.4, -87.1],
  ];
  const days = ["1995-01-15", "2010-06-21", "2026-03-20", "2026-09-23", "2031-12-21"];
  const hours = ["00:00", "05:17", "09:40", "13:05", "16:33", "21:50"];
  const cases = places.flatMap(([lat, lon]) =>
    days.flatMap((day) => hours.map((hour) => ({ lat, lon, day, hour }))),
  );

  it(`agrees within 2e-3 degree at ${cases.length} places and times`, () => {
    for (const { lat, lon, day, hour } of cases) {
      const at = new Date(`${day}T${hour}:00Z`);
      const ours = sunPosition({ latitude_deg: lat, longitude_deg: lon }, at);
      // No refraction: without pressure the second library gives the bare zenith. Its hours are UTC (time zone 0).
      const theirs = getSpa(at, lat, lon, 0, { pressure: 0, function: 0 });
      const where = `${lat} ${lon} ${day} ${hour}`;
      expect(Math.abs(90 - theirs.zenith - ours.elevation_unrefracted_deg), where).toBeLessThan(2e-3);
      const turn = Math.abs(((theirs.azimuth - ours.azimuth_deg + 540) % 360) - 180);
      // Near the zenith an azimuth turns fast: compare it as a distance on the sky.
      expect(turn * Math.cos((ours.elevation_unrefracted_deg * Math.PI) / 180), where).toBeLessThan(2e-3);
    }
  });

  it("lifts the sun as the second library does, to 1e-3 degree for standard air", () => {
    for (const hour of ["06:10", "07:00", "09:00", "12:00", "17:30"]) {
      const at = new Date(`2026-03-20T${hour}:00Z`);
      const ours = sunPosition({ latitude_deg: 10, longitude_deg: 0 }, at);
      const theirs = getSpa(at, 10, 0, 0, { pressure: 1013.25, temperature: 15, function: 0 });
      expect(Math.abs(90 - theirs.zenith - ours.elevation_refracted_deg), hour).toBeLessThan(2e-3);
    }
  });
});

describe("position of the sun, against an ephemeris", () => {
  // astronomy-engine: planetary theory, nutation, aberration, parallax and drift of its own.
  it.each([
    [1900, 1949, 2e-3],
    [1950, 2050, 1e-3],
    [2051, 2100, 1e-3],
  ])("from %s to %s all over the globe agrees within %s degree", (from, to, within_deg) => {
    let greatest_deg = 0;
    for (let year = from; year <= to; year += 1) {
      for (let step = 0; step < 12; step += 1) {
        const instant = new Date(Date.UTC(year, 0, 1) + (step * 30.117 + ((year * 0.37) % 9)) * 86_400_000);
        const latitude_deg = ((step * 37 + year * 13) % 181) - 90;
        const longitude_deg = ((step * 53 + year * 7) % 361) - 180;
        const ours = sunPosition({ latitude_deg, longitude_deg }, instant);
        const observer = new Astronomy.Observer(latitude_deg, longitude_deg, 0);
        const { ra, dec } = Astronomy.Equator(Astronomy.Body.Sun, instant, observer, true, true);
        const theirs = Astronomy.Horizon(instant, observer, ra, dec);
        const rise = Math.abs(theirs.altitude - ours.elevation_unrefracted_deg);
        const turn = Math.abs(((theirs.azimuth - ours.azimuth_deg + 540) % 360) - 180);
        const aside = turn * Math.cos((theirs.altitude * Math.PI) / 180);
        greatest_deg = Math.max(greatest_deg, rise, aside);
      }
    }
    expect(greatest_deg).toBeLessThan(within_deg);
  });
});

describe("position of the sun, edges", () => {
  const noon = new Date("2026-06-21T12:00:00Z");

  it.each([
    [91, 0, "latitude_out_of_range"],
    [-90.001, 0, "latitude_out_of_range"],
    [Number.NaN, 0, "latitude_out_of_range"],
    [0, 180.5, "longitude_out_of_range"],
    [0, Number.POSITIVE_INFINITY, "longitude_out_of_range"],
  ])("refuses latitude %s, longitude %s", (latitude_deg, longitude_deg, code) => {
    expect(() => sunPosition({ latitude_deg, longitude_deg }, noon)).toThrow(
      expect.objectContaining({ code }),
    );
  });

  it.each(["1899-12-31T23:59:59Z", "2101-01-01T00:00:00Z", "no date"])("refuses the instant %s", (text) => {
    expect(() => sunPosition({ latitude_deg: 0, longitude_deg: 0 }, new Date(text))).toThrow(
      expect.objectContaining({ code: "instant_out_of_range" }),
    );
  });

  it("says what was wrong, and what is right", () => {
    const refusal = (latitude_deg: number, longitude_deg: number, instant = noon) => {
      try {
        sunPosition({ latitude_deg, longitude_deg }, instant);
      } catch (error) {
        if (error instanceof OpticsDomainError) return error.refusal;
        throw error;
      }
      return "taken";
    };
    expect(refusal(91, 0)).toEqual({
      code: "latitude_out_of_range",
      parameters: { latitude_deg: 91, limit_deg: 90 },
    });
    expect(refusal(0, -181)).toEqual({
      code: "longitude_out_of_range",
      parameters: { longitude_deg: -181, limit_deg: 180 },
    });
    const years = { first_year: 1900, last_year: 2100 };
    expect(refusal(0, 0, new Date("2101-06-01T00:00Z"))).toEqual({
      code: "instant_out_of_range",
      parameters: { year: 2101, ...years },
    });
    expect(refusal(0, 0, new Date("no date"))).toEqual({ code: "instant_out_of_range", parameters: years });
  });

  it("stays finite at the poles, and puts the sun of the June solstice 23.4 degrees high over the North Pole", () => {
    const north = sunPosition({ latitude_deg: 90, longitude_deg: 0 }, noon);
    expect(north.elevation_unrefracted_deg).toBeCloseTo(23.44, 1);
    expect(Number.isFinite(north.azimuth_deg)).toBe(true);
    const south = sunPosition({ latitude_deg: -90, longitude_deg: 0 }, noon);
    expect(south.elevation_refracted_deg).toBe(south.elevation_unrefracted_deg);
  });
});

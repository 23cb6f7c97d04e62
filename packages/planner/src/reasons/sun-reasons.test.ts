import { daylightScene } from "@sunfathom/fixtures/scenes";
import { expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import type { Scene } from "../scene/scene.js";
import { sunReasons } from "./sun-reasons.js";

const { sun_elevation_deg: _, ...rest } = daylightScene("IB", 45, 5);
const there: Scene = { ...rest, daylight_basis: "place_time", latitude_deg: 20, longitude_deg: -128.4 };
const said = (scene: Scene) => sunReasons(conditionsOf(scene));

it("nothing is said of a sun whose height was given", () => {
  expect(said(daylightScene("IB", 45, 5))).toEqual([]);
});

it("a place and a time say where the sun stands, and when that is in UTC", () => {
  const scene = { ...there, time: "2026-06-21T20:07:30Z" };
  const { sun } = conditionsOf(scene);
  const [stands, ...more] = said(scene);
  expect(more).toEqual([]);
  expect(stands).toMatchObject({
    code: "sun_stands",
    basis: "computed",
    parameters: {
      elevation_deg: sun?.elevation_deg,
      azimuth_deg: sun?.azimuth_deg,
      time: "2026-06-21T20:07:30.000Z",
    },
  });
});

// Central European summer time ends at 03:00 on the last Sunday of October (EU directive 2000/84/EC); UTC + 2 comes first.
it("a local time that the clock shows twice is told which of the two is meant", () => {
  const polar = { ...there, latitude_deg: -60, longitude_deg: 170, time_zone: "Europe/Berlin" };
  const reasons = said({ ...polar, local_time: "2026-10-25T02:30" });
  expect(reasons.map(({ code }) => code)).toEqual(["sun_stands", "clock_shows_twice"]);
  expect(reasons[1].basis).toBe("computed");
  expect(reasons[1].parameters).toEqual({ time: "2026-10-25T00:30:00.000Z" });
});

it("the clock there is told where the scene says it: as such, or as an offset", () => {
  const localOf = (scene: Scene) => (said(scene)[0].parameters as { local?: object }).local;
  const offset = "2026-06-21T10:07:30-10:00";
  expect(localOf({ ...there, time: offset })).toEqual({ time: "2026-06-21T10:07" });
  expect(localOf({ ...there, time: "2026-06-21T20:07:30Z" })).toBeUndefined();
  expect(localOf({ ...there, local_time: "2026-06-21T11:00", time_zone: "Etc/GMT+9" })).toEqual({
    time: "2026-06-21T11:00",
  });
});

it("a night there is told as such", () => {
  const night = said({ ...there, time: "2026-06-21T08:00:00Z" });
  expect(night.map(({ code, basis }) => [code, basis])).toEqual([["night_there", "computed"]]);
});

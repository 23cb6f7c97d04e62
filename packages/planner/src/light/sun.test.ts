import { atNight, daylightScene } from "@sunfathom/fixtures/scenes";
import { sunPosition } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { sunOf } from "./sun.js";

const { sun_elevation_deg: _, ...rest } = daylightScene("IB", 45, 8);
const placed: Scene = { ...rest, daylight_basis: "place_time", latitude_deg: 0.5, longitude_deg: -128.4 };
const elevation_deg = (time: string) =>
  sunPosition({ latitude_deg: 0.5, longitude_deg: -128.4 }, new Date(time)).elevation_refracted_deg;

function problemOf(scene: Scene): SceneProblem {
  try {
    sunOf(scene);
  } catch (error) {
    if (error instanceof SceneProblem) return error;
    throw error;
  }
  throw new Error("no problem");
}

/** The first whole second of an evening at which the sun stands lower than so many degrees. */
function setsBelow(limit_deg: number): { before: string; after: string } {
  let [above, below] = [Date.parse("2026-03-20T23:00:00Z"), Date.parse("2026-03-21T05:00:00Z")];
  while (below - above > 1000) {
    const middle = above + Math.floor((below - above) / 2000) * 1000;
    if (elevation_deg(new Date(middle).toISOString()) < limit_deg) below = middle;
    else above = middle;
  }
  return { before: new Date(above).toISOString(), after: new Date(below).toISOString() };
}

describe("the sun of a scene", () => {
  it("is as high as said, from 10 degrees on, where the clear-sky model begins to hold (Bird & Riordan 1986: zenith to 80)", () => {
    expect(sunOf(daylightScene("IB", 10, 8))).toEqual({ elevation_deg: 10 });
    const problem = problemOf(daylightScene("IB", 9.96, 8));
    expect(problem.refusal).toEqual({
      code: "sun_too_low",
      parameters: { elevation_deg: 10, min_elevation_deg: 10 },
    });
    expect(problem.field).toBe("sun_elevation_deg");
  });

  it("is none where there is said to be no daylight", () => {
    expect(sunOf(atNight(daylightScene("IB", 45, 8)))).toBeUndefined();
  });

  it("stands at a place and an instant where the ephemeris puts it, seen through air", () => {
    const time = "2026-03-20T18:00:00Z";
    const sun = sunOf({ ...placed, time });
    expect(sun).toEqual({
      elevation_deg: elevation_deg(time),
      azimuth_deg: sunPosition({ latitude_deg: 0.5, longitude_deg: -128.4 }, new Date(time)).azimuth_deg,
      instant: new Date(time),
      repeated: false,
    });
  });

  it("is the same by the clock on the wall: noon in Etc/GMT+9 is 21:00 UTC (IANA: signs of Etc are turned)", () => {
    const byClock = sunOf({ ...placed, local_time: "2026-03-20T12:00", time_zone: "Etc/GMT+9" });
    expect(byClock).toEqual(sunOf({ ...placed, time: "2026-03-20T21:00:00Z" }));
  });

  it("says where the clock showed its time twice (IANA: Berlin puts clocks back on 25 October 2026)", () => {
    const berlin = { ...placed, latitude_deg: 52, longitude_deg: -150, time_zone: "Europe/Berlin" };
    expect(sunOf({ ...berlin, local_time: "2026-10-25T02:30" })?.repeated).toBe(true);
  });

  it("stands too low from 10 degrees to the end of civil twilight, 6 degrees below the horizon, and is none in the night", () => {
    const low = setsBelow(10);
    expect(sunOf({ ...placed, time: low.before })?.elevation_deg).toBeGreaterThanOrEqual(10);
    expect(problemOf({ ...placed, time: low.after }).field).toBe("time");
    const night = setsBelow(-6);
    expect(problemOf({ ...placed, time: night.before }).code).toBe("sun_too_low");
    expect(sunOf({ ...placed, time: night.after })).toBeUndefined();
  });

  it("names the clock where that is what was given", () => {
    const dusk: Scene = { ...placed, local_time: "2026-03-20T18:00", time_zone: "Etc/GMT+9" };
    expect(problemOf(dusk).field).toBe("local_time");
  });
});

describe("a place or time that does not exist", () => {
  // Berlin for the hour that its clocks skip (directive 2000/84/EC; IANA).
  it.each([
    [{ latitude_deg: 91, time: "2026-03-20T18:00:00Z" }, "latitude_out_of_range", "latitude_deg"],
    [{ longitude_deg: 181, time: "2026-03-20T18:00:00Z" }, "longitude_out_of_range", "longitude_deg"],
    [{ time: "1850-03-20T01:00:00Z" }, "instant_out_of_range", "time"],
    [{ local_time: "2026-03-20T12:00", time_zone: "Nowhere/Here" }, "time_zone_unknown", "time_zone"],
    [{ local_time: "noon", time_zone: "Etc/GMT+9" }, "local_time_malformed", "local_time"],
    [{ local_time: "2026-03-29T02:30", time_zone: "Europe/Berlin" }, "local_time_skipped", "local_time"],
    [{ time_zone: "Etc/GMT+9" }, "local_time_malformed", "local_time"],
    [{ local_time: "2026-03-20T12:00" }, "time_zone_unknown", "time_zone"],
  ] as [Partial<Scene>, string, string][])("%o is refused as %s, at %s", (where, code, field) => {
    const problem = problemOf({ ...placed, ...where });
    expect([problem.code, problem.field]).toEqual([code, field]);
  });
});

import { daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { daysOf } from "./days.js";
import { DRAWN_WITHIN, findWindows, lightWindows } from "./light-windows.js";
import { AIMS, windowCost } from "./objective.js";
import type { WindowsPlan } from "./plan.js";
import { isSunny, judgeWindow } from "./rank.js";
import { regretOf } from "./regret.test-support.js";
import { siteDay } from "./site-days.test-support.js";

const PLAN: WindowsPlan = {
  scene: daylightScene("IB", 45, 5, 18),
  latitude_deg: -37.3,
  longitude_deg: -128.4,
  time_zone: "Etc/GMT+9",
  first_date: "2027-01-16",
  last_date: "2027-01-18",
  opens_at: "07:00",
  closes_at: "18:00",
  window_min: 60,
  aim: "natural_colour",
  forecast: [{ date: "2027-01-17", cloud_oktas: 8 }],
};

describe("the figure that windows are ranked by", () => {
  it.each(AIMS)("falls with less colour error and with more light, for %s", (aim) => {
    expect(windowCost(aim, 5, 1)).toBeLessThan(windowCost(aim, 6, 1));
    expect(windowCost(aim, 5, 1)).toBeLessThan(windowCost(aim, 5, 0));
  });

  it("has the weights that the guide sets down", () => {
    expect(windowCost("natural_colour", 8, 6)).toBeCloseTo(4, 12);
    expect(windowCost("sunlit_background", 8, 2)).toBeCloseTo(4, 12);
    expect(windowCost("lamps_lead", 8, 3)).toBeCloseTo(4, 12);
  });
});

describe("windows of light", () => {
  it("are best around noon where the sky is clear, and worse under a dull one", () => {
    const { days } = lightWindows(PLAN);
    expect(days.map(({ date }) => date)).toEqual(["2027-01-16", "2027-01-17", "2027-01-18"]);
    const [clear, dull] = days;
    const hour = Number(clear?.windows[0]?.from_local_time.slice(11, 13));
    expect(hour).toBeGreaterThanOrEqual(10);
    expect(hour).toBeLessThanOrEqual(13);
    const [first, second] = [clear?.windows[0], dull?.windows[0]];
    expect(second?.illuminance_lx.likely).toBeLessThan((first?.illuminance_lx.likely ?? 0) / 2);
    expect(lightWindows(PLAN).best.date).not.toBe("2027-01-17");
    expect(clear?.windows[0]?.cloud_basis).toBe("assumed_clear");
    expect(dull?.windows[0]?.cloud_basis).toBe("day");
  });

  it("are best with a low sun or a dull sky where video lights are to lead", () => {
    const { best } = lightWindows({
      ...PLAN,
      aim: "lamps_lead",
      scene: { ...PLAN.scene, lamps: [TWO_LAMPS] },
    });
    expect(best.from_local_time).toBe("2027-01-17T17:00");
  });

  it.each([3, 11, 12, 25, 31, 44])(
    "lists none that one left out beats on both colour error and light (site-day %i)",
    (seed) => {
      const found = findWindows(siteDay(seed));
      for (const { ranked } of found.days)
        for (const listed of ranked.slice(0, 3))
          for (const left of ranked.slice(3))
            expect(
              left.delta_e00 < listed.delta_e00 && left.figures.light_stops > listed.figures.light_stops,
            ).toBe(false);
    },
  );

  it("counts windows without enough sun, and has no answer where there are no others", () => {
    const early = lightWindows({ ...PLAN, opens_at: "04:00" });
    expect(early.days[0]?.windows_without_sun).toBe(2);
    const { windows = [], windows_behind = 0 } = early.days[0] ?? {};
    expect(windows.length + windows_behind + 2).toBe(14);
    expect(early.reasons.map(({ code }) => code)).toContain("windows_sun_too_low");
    expect(() => lightWindows({ ...PLAN, opens_at: "00:00", closes_at: "03:00" })).toThrow(
      expect.objectContaining({ code: "sun_too_low", field: "opens_at" }),
    );
  });

  it("says what it assumed of the sky, and what of the forecast bears on nothing", () => {
    const { reasons } = lightWindows({
      ...PLAN,
      forecast: [...PLAN.forecast, { date: "2027-03-01", cloud_oktas: 3 }],
    });
    expect(reasons).toContainEqual(
      expect.objectContaining({ code: "windows_sky_assumed", parameters: { days: 2, of_days: 3 } }),
    );
    expect(reasons).toContainEqual(
      expect.objectContaining({ code: "windows_forecast_unused", parameters: { entries: 1 } }),
    );
  });
});

describe("days across a clock change", () => {
  // Current rules of the IANA time zone database: clocks in this zone leap from 02:00 to 03:00 on 2026-03-29 and back on 2026-10-25.
  const berlin = { ...PLAN, latitude_deg: 52, longitude_deg: 13, time_zone: "Europe/Berlin" };
  const hoursOf = (date: string, hours: { opens_at: string; closes_at: string }) =>
    daysOf({ ...berlin, first_date: date, last_date: date, ...hours }).days[0]?.windows.map(
      ({ from_local_time }) => from_local_time.slice(11),
    );

  it("have an hour less, or one more, between the same times", () => {
    const hours = { opens_at: "01:00", closes_at: "05:00" };
    expect(hoursOf("2026-03-28", hours)).toEqual(["01:00", "02:00", "03:00", "04:00"]);
    expect(hoursOf("2026-03-29", hours)).toEqual(["01:00", "03:00", "04:00"]);
    expect(hoursOf("2026-10-25", hours)).toEqual(["01:00", "02:00", "02:00", "03:00", "04:00"]);
  });

  it("open with the first time that the clocks show after the one that they leap over", () => {
    expect(hoursOf("2026-03-29", { opens_at: "02:30", closes_at: "05:30" })).toEqual(["03:00", "04:00"]);
  });

  it("keep the sun where it is: the same instants, whatever the clocks show", () => {
    const at = (date: string) =>
      daysOf({ ...berlin, first_date: date, last_date: date, opens_at: "12:00", closes_at: "13:00" }).days[0]
        ?.windows[0];
    const [before, after] = [at("2026-03-28"), at("2026-03-29")];
    expect((after?.from_ms ?? 0) - (before?.from_ms ?? 0)).toBe(23 * 3_600_000);
  });
});

describe("what is drawn between heights of the sun", () => {
  it.each([1, 2, 4, 7, 9, 14])(
    "is as near to what the model says as the answer says it is (site-day %i)",
    (seed) => {
      const found = findWindows(siteDay(seed));
      const { states, days } = found;
      for (const { day } of days)
        for (const window of day.windows.filter(isSunny).slice(0, 4)) {
          const drawn = judgeWindow(states, window);
          const exact = judgeWindow(states, window, (moment) => states.exactlyAt(moment));
          expect(Math.abs(drawn.delta_e00 - exact.delta_e00)).toBeLessThan(DRAWN_WITHIN.delta_e00);
          expect(Math.abs(drawn.figures.light_stops - exact.figures.light_stops)).toBeLessThan(
            DRAWN_WITHIN.stops,
          );
          expect(Math.abs(drawn.figures.level - exact.figures.level)).toBeLessThan(DRAWN_WITHIN.stops);
        }
    },
  );

  it.each([1, 5, 8, 13])(
    "costs at most 2 % against the best window by single scenes (site-day %i)",
    (seed) => {
      expect(regretOf(seed) ?? Number.NaN).toBeLessThanOrEqual(0.02);
    },
  );
});

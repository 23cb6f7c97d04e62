import { lightWindowsExamples } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

const url = "/v1/light-windows";
const usual = lightWindowsExamples.three_days_at_a_reef.value;
const one = { ...usual, last_date: usual.first_date, forecast: [] };
const post = (payload: object, headers: Record<string, string> = {}) =>
  app.inject({ method: "POST", url, payload, headers });

describe("windows of light", () => {
  it("come for each day, the same by POST and QUERY, with a tag that saves the computing", async () => {
    const posted = await post(usual);
    expect(posted.statusCode).toBe(200);
    const { days, best, cautions, model } = posted.json();
    expect(days.map(({ date }: { date: string }) => date)).toEqual([
      "2027-01-16",
      "2027-01-17",
      "2027-01-18",
    ]);
    expect(days[0].windows).toHaveLength(3);
    expect(best.date).not.toBe("2027-01-17");
    expect(cautions[0].code).toBe("not_a_dive_planner");
    expect(model.sources.length).toBeGreaterThan(3);
    const asked = await app.inject({ method: "QUERY" as "POST", url, payload: usual });
    expect(asked.payload).toBe(posted.payload);
    const known = await app.inject({
      method: "QUERY" as "POST",
      url,
      payload: usual,
      headers: { "if-none-match": String(posted.headers["etag"]) },
    });
    expect(known.statusCode).toBe(304);
  });

  it.each(["de", "es", "fr"])("say the same figures in %s", async (language) => {
    const [english, other] = [(await post(one)).json(), (await post({ ...one, language })).json()];
    const [of, otherOf] = [english.days[0].windows[0], other.days[0].windows[0]];
    expect({ ...otherOf, reason: undefined }).toEqual({ ...of, reason: undefined });
    expect(otherOf.reason.text).not.toBe(of.reason.text);
    expect(other.reasons.map(({ code }: { code: string }) => code)).toEqual(
      english.reasons.map(({ code }: { code: string }) => code),
    );
  });

  it("do not depend on the order of the forecast", async () => {
    const forecast = [
      { date: "2027-01-16", hour: 9, cloud_oktas: 3 },
      { date: "2027-01-16", cloud_oktas: 6 },
    ];
    const [first, second] = await Promise.all([
      post({ ...one, forecast }),
      post({ ...one, forecast: [...forecast].reverse() }),
    ]);
    expect(first.headers["etag"]).toBe(second.headers["etag"]);
  });
});

describe("what is wrong is told by its place", () => {
  it.each<[string, object, number, string]>([
    ["days the wrong way round", { last_date: "2027-01-15" }, 400, "/last_date dates_in_order"],
    ["too many days", { last_date: "2027-02-16" }, 400, "/last_date dates_at_most"],
    ["a day that there is not", { first_date: "2027-02-30" }, 400, "/first_date date_exists"],
    ["a closing before the opening", { closes_at: "07:00" }, 400, "/closes_at opening_in_order"],
    ["hours shorter than a window", { closes_at: "08:30" }, 400, "/closes_at opening_in_order"],
    [
      "a time in the site",
      { site: { ...usual.site, local_time: "2027-01-16T10:00" } },
      400,
      "/site/local_time site_field",
    ],
    ["a site without water", { site: { depth_m: 5 } }, 400, "/site one_water_basis"],
    [
      "a misspelt field of the site",
      { site: { ...usual.site, dept_m: 3 } },
      400,
      "/site/dept_m unknown_field",
    ],
    ["lights that lead where there are none", { aim: "lamps_lead" }, 400, "/aim aim_needs_lamps"],
    [
      "the same hour twice",
      {
        forecast: [
          { date: "2027-01-16", cloud_oktas: 1 },
          { date: "2027-01-16", cloud_oktas: 2 },
        ],
      },
      400,
      "/forecast/1 forecast_once",
    ],
    ["a zone that there is not", { time_zone: "Nowhere/Here" }, 422, "/time_zone time_zone_unknown"],
    ["no sun at all", { opens_at: "00:00", closes_at: "03:00" }, 422, "/opens_at sun_too_low"],
    [
      "water without light left",
      {
        site: {
          kd_samples: [
            { wavelength_nm: 400, kd_per_m: 20 },
            { wavelength_nm: 700, kd_per_m: 20 },
          ],
          depth_m: 100,
        },
      },
      422,
      "/site/depth_m no_daylight_left",
    ],
  ])("%s", async (_, change, status, told) => {
    const reply = await post({ ...one, ...change });
    expect(reply.statusCode).toBe(status);
    const { errors } = reply.json();
    expect(
      errors.map(({ pointer, code }: { pointer: string; code: string }) => `${pointer} ${code}`),
    ).toContain(told);
    for (const { message, allowed } of errors) expect(`${message}${allowed}`).not.toBe("");
  });

  it("a version of the model that is another one", async () => {
    const reply = await post({ ...one, expect_model_version: "1999.1.1" });
    expect(reply.statusCode).toBe(409);
  });

  it("a query, of which there is none", async () => {
    const reply = await app.inject({ method: "POST", url: `${url}?fields=best`, payload: one });
    expect(reply.json().code).toBe("invalid_query");
  });
});

it("takes days across a clock change", async () => {
  // Clocks of this zone leap from 02:00 to 03:00 on 2026-03-29 (IANA time zone database).
  const reply = await post({
    ...one,
    latitude_deg: 40,
    longitude_deg: 14,
    time_zone: "Europe/Rome",
    first_date: "2026-03-28",
    last_date: "2026-03-29",
    opens_at: "02:30",
  });
  const { days } = reply.json();
  expect(
    days.map(
      ({ windows_without_sun: none, windows_behind, windows }: never) =>
        none + windows_behind + Object(windows).length,
    ),
  ).toEqual([14, 14]);
});

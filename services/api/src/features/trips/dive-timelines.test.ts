import { diveTimelinesExamples } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

const url = "/v1/dive-timelines";
const usual = diveTimelinesExamples.wall_with_three_clips.value;
const withEvents = diveTimelinesExamples.flip_filter_with_events.value;
const post = (payload: object, headers: Record<string, string> = {}) =>
  app.inject({ method: "POST", url, payload, headers });
const codes = (all: readonly { code: string }[]): string[] => all.map(({ code }) => code);

describe("a dive as it was dived", () => {
  it("has its clips on the camera's clock, and the depths of the samples at those times", async () => {
    const { statusCode, ...posted } = await post(usual);
    expect(statusCode, posted.payload).toBe(200);
    const { clips, moments, done_by, cautions, site } = posted.json();
    expect(done_by).toBe("plan");
    expect(cautions[0].code).toBe("not_a_dive_planner");
    // 09:35:40 by the camera, which is 75 s ahead, is 09:34:25 by the dive's clock: 265 s into it, on the way from 18 m to 22 m.
    const [first] = clips;
    expect(first).toMatchObject({
      id: "A001",
      from_s: 265,
      to_s: 325,
      from_clock: "09:35:40",
      to_clock: "09:36:40",
    });
    expect(first.min_depth_m).toBeCloseTo(18 + (4 * (265 - 180)) / 1020, 2);
    expect(first.max_depth_m).toBeCloseTo(18 + (4 * (325 - 180)) / 1020, 2);
    expect(site.max_depth_m).toBe(
      Math.max(...clips.map((clip: { max_depth_m: number }) => clip.max_depth_m)),
    );
    for (const { red_left_percent, exposure_value_ev100 } of clips) {
      expect(red_left_percent.low).toBeLessThan(red_left_percent.likely);
      expect(exposure_value_ev100.low).toBeLessThan(exposure_value_ev100.likely);
    }
    // The last clip is the shallowest: most red and most light.
    expect(clips[2].red_left_percent.likely).toBeGreaterThan(clips[0].red_left_percent.likely);
    const balances = moments.filter(({ action }: { action: string }) => action === "balance");
    expect(balances[0].time_s).toBeLessThanOrEqual(first.from_s);
    for (const { time_s, dive_clock } of balances)
      expect(dive_clock).toBe(
        new Date(Math.round((34_200 + time_s) * 10) * 100)
          .toISOString()
          .slice(11, 19 + (/\./.test(dive_clock) ? 2 : 0)),
      );
  });

  it("is judged by what was done where that is told", async () => {
    const { clips, moments, done_by, reasons } = (await post(withEvents)).json();
    expect(done_by).toBe("events");
    expect(codes(reasons)).toContain("timeline_as_done");
    const done = moments.filter(({ action }: { action: string }) => action !== "exposure");
    expect(done.map(({ action, time_s }: { action: string; time_s: number }) => [action, time_s])).toEqual([
      ["filter_on", 170],
      ["balance", 200],
      ["filter_off", 2280],
    ]);
    expect(clips.map((clip: { through_filter: boolean }) => clip.through_filter)).toEqual([true, true]);
    const without = (await post({ ...withEvents, events: [] })).json();
    expect(without.clips.map(({ balance }: { balance: string }) => balance)).toEqual(["not_set", "not_set"]);
    expect(without.clips[0].cast_delta_e00).toBeUndefined();
  });

  it("takes twenty thousand samples, on threads, and answers within seconds", async () => {
    const samples = Array.from({ length: 20_000 }, (_, i) => ({
      time_s: i * 0.2,
      depth_m: Math.round(100 * (12 + 8 * Math.sin(i / 900)) * Math.min(1, i / 900)) / 100,
    }));
    const { clips: _, ...rest } = usual;
    const payload = { ...rest, samples, clips: [{ from_clock: "09:41:00", length_s: 1800 }] };
    expect(JSON.stringify(payload).length).toBeGreaterThan(256 * 1024);
    const answered = await post(payload);
    expect(answered.statusCode, answered.payload.slice(0, 300)).toBe(200);
    expect(answered.json().clips).toHaveLength(1);
    const more = await post({ ...payload, samples: [...samples, { time_s: 4001, depth_m: 5 }] });
    expect(more.statusCode).toBe(400);
    expect(more.json().errors[0].pointer).toBe("/samples");
  });

  it.each(["de", "es", "fr"])("says the same figures in %s", async (language) => {
    const [english, other] = [(await post(usual)).json(), (await post({ ...usual, language })).json()];
    const bare = (all: readonly { reason: { code: string; text: string } }[]) =>
      all.map(({ reason, ...rest }) => ({ ...rest, code: reason.code }));
    expect(bare(other.clips)).toEqual(bare(english.clips));
    expect(bare(other.moments)).toEqual(bare(english.moments));
    expect(codes(other.reasons)).toEqual(codes(english.reasons));
    expect(other.clips[0].reason.text).not.toBe(english.clips[0].reason.text);
  });
});

describe("what is wrong is told by its place", () => {
  const [a, b, ...later] = usual.samples;
  it.each<[string, object, string]>([
    ["no dive at all", { samples: undefined }, "/samples profile_one_way"],
    ["a dive that goes back in time", { samples: [b, a, ...later] }, "/samples/1/time_s samples_in_order"],
    ["two samples at one time", { samples: [a, a, ...later] }, "/samples/1/time_s samples_in_order"],
    [
      "a clip before the dive",
      { clips: [{ from_clock: "09:31:00", length_s: 20 }] },
      "/clips/0 clip_within_dive",
    ],
    ["a clip after it", { clips: [{ from_clock: "10:19:00", length_s: 60 }] }, "/clips/0 clip_within_dive"],
    [
      "clips that overlap",
      {
        clips: [
          { from_clock: "09:52:10", length_s: 45 },
          { from_clock: "09:52:00", length_s: 45 },
        ],
      },
      "/clips/0 clips_apart",
    ],
    [
      "an event outside the dive",
      { events: [{ time_s: 2881, event: "balance" }] },
      "/events/0/time_s event_within_dive",
    ],
    [
      "a filter that changes and is none",
      { events: [{ time_s: 300, event: "filter_on" }] },
      "/events events_need_filter",
    ],
    ["depths of its own", { site: { ...usual.site, max_depth_m: 20 } }, "/site/max_depth_m beside_dive"],
    [
      "a site that is wrong",
      { site: { ...usual.site, subject_distance_m: 900 } },
      "/site/subject_distance_m out_of_range",
    ],
    ["a clock that is none", { start_clock: "25:00:00" }, "/start_clock wrong_form"],
  ])("%s", async (_, change, expected) => {
    const { statusCode, ...answered } = await post({ ...usual, ...change });
    expect(statusCode).toBe(400);
    const { code, errors } = answered.json();
    expect(code).toBe("invalid_request");
    expect(
      errors.map((error: { pointer: string; code: string }) => `${error.pointer} ${error.code}`),
    ).toContain(expected);
  });

  it("a sun that sinks too low in the course of the dive, by the field of its time", async () => {
    const late = { ...withEvents, site: { ...withEvents.site, local_time: "2027-01-16T19:00" } };
    const { statusCode, ...answered } = await post(late);
    expect(statusCode).toBe(422);
    expect(answered.json().errors[0]).toMatchObject({ pointer: "/site/local_time", code: "sun_too_low" });
  });
});

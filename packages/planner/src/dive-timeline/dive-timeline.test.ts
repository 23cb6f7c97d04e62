import { describe, expect, it } from "vitest";
import { decisionsFor } from "../dive-advice/decisions.js";
import { balancesDown, balancesUp } from "../dive-advice/legs.js";
import { exposuresOf } from "../exposure-loss/exposures.js";
import { meteredOnSubject } from "../exposure-loss/sensitivity.js";
import { diveTimeline } from "./dive-timeline.js";
import { planOf, wallDive } from "./dives.test-support.js";
import { DRAWN_WITHIN } from "./light-grid.js";
import { filmedDepths, Profile } from "./profile.js";

const wholeDive = { clips: [], samples: wallDive(26, 40) };
const codes = (all: readonly { code: string }[]) => all.map(({ code }) => code);

describe("what was to be done", () => {
  const plan = planOf({ filter_change_underwater: "flip", balance_tolerance_delta_e00: 4 }, wholeDive);
  const answer = diveTimeline(plan);
  const { legs } = decisionsFor(plan.scene);

  it("is what the advice for this dive says, at the moments when the dive passed those depths", () => {
    const depths = (action: string, after: number, before: number) =>
      answer.moments
        .filter((moment) => moment.action === action && moment.time_s >= after && moment.time_s < before)
        .map(({ depth_m }) => Number(depth_m.toFixed(6)));
    const deepest = plan.samples.reduce((a, b) => (b.depth_m > a.depth_m ? b : a)).time_s;
    const closeTo = (all: readonly number[]) => all.map((depth) => expect.closeTo(depth, 5));
    expect(depths("balance", 0, deepest + 1)).toEqual(closeTo([...new Set(balancesDown(legs))]));
    expect(depths("balance", deepest + 1, Infinity)).toEqual(closeTo(balancesUp(legs)));
    expect(legs.length).toBeGreaterThan(1);
    expect(depths("filter_on", 0, Infinity)).toHaveLength(1);
    expect(answer.done_by).toBe("plan");
  });

  it("has the exposures and casts of single scenes at those depths", () => {
    for (const moment of answer.moments.filter(({ action }) => action === "balance")) {
      const leg = legs.find(({ filtered }) => filtered === isFiltered(moment.time_s));
      const scene = {
        ...(leg?.scene ?? plan.scene),
        min_depth_m: moment.depth_m,
        max_depth_m: moment.depth_m,
      };
      const [single] = exposuresOf(scene).depths;
      const { low, likely, high } = moment.exposure_value_ev100;
      expect(Math.abs(likely - meteredOnSubject(single))).toBeLessThan(DRAWN_WITHIN.stops);
      // The spread is drawn between fewer depths; without haze it is that of the exposure.
      const own = single.exposure_value_ev100;
      expect(Math.abs(high - low - (own.high - own.low))).toBeLessThan(0.1 * (own.high - own.low));
    }
    function isFiltered(time_s: number): boolean {
      const changes = answer.moments.filter(
        ({ action, time_s: at_s }) => action.startsWith("filter") && at_s <= time_s,
      );
      return changes.at(-1)?.action === "filter_on" || (changes.length === 0 && (legs[0]?.filtered ?? false));
    }
  });

  it("sets the exposure anew wherever what is metered has moved by a stop, and no sooner", () => {
    const changes = answer.moments.filter(({ action }) => action === "exposure");
    expect(changes.length).toBeGreaterThan(0);
    for (const { reason } of changes)
      if (reason.code === "moment_exposure")
        expect(Math.abs(reason.parameters.stops)).toBeGreaterThanOrEqual(1);
  });
});

describe("a clip", () => {
  const samples = [
    { time_s: 0, depth_m: 2 },
    { time_s: 600, depth_m: 2 },
    { time_s: 900, depth_m: 12 },
    { time_s: 1500, depth_m: 12 },
  ];
  const clips = [
    { from_s: 300, to_s: 360 },
    { from_s: 1000, to_s: 1100 },
  ];
  const wide = {
    white_balance_max_duv: 0.1,
    white_balance_max_cct_K: 20_000,
    sensor_samples: undefined as never,
  };
  const at = (...times: number[]) => times.map((time_s) => ({ time_s, event: "balance" as const }));
  const judged = (events: ReturnType<typeof at>) =>
    diveTimeline(planOf(wide, { samples, clips, events }, "II")).clips.map(({ balance }) => balance);

  it("has a balance that holds where it was made, is lost 10 m deeper, and holds again where it is made anew", () => {
    expect(judged(at(100))).toEqual(["held", "lost"]);
    expect(judged(at(100, 950))).toEqual(["held", "held"]);
    expect(judged(at(950))).toEqual(["not_set", "held"]);
    expect(judged([])).toEqual(["not_set", "not_set"]);
  });

  it("that goes on while it is lost says when", () => {
    const [clip] = diveTimeline(
      planOf(wide, { samples, clips: [{ from_s: 300, to_s: 1200 }], events: at(100) }, "II"),
    ).clips;
    expect(clip?.reason.code).toBe("clip_balance_lost");
    if (clip?.reason.code !== "clip_balance_lost") return;
    expect(clip.reason.parameters.after_s).toBeGreaterThan(300);
    expect(clip.reason.parameters.after_s).toBeLessThan(600);
    expect(clip.min_depth_m).toBe(2);
    expect(clip.max_depth_m).toBe(12);
  });

  it("through a filter that came on within the dive is metered behind it", () => {
    const filter = { filter_kind: "red", filter_density: 0.9, filter_change_underwater: "flip" } as const;
    const events = [{ time_s: 950, event: "filter_on" as const }];
    const [, behind] = diveTimeline(planOf({ ...wide, ...filter }, { samples, clips, events })).clips;
    const [, bare] = diveTimeline(
      planOf({ ...wide, ...filter }, { samples, clips, events: [{ time_s: 1400, event: "filter_on" }] }),
    ).clips;
    expect(behind?.through_filter).toBe(true);
    expect(bare?.through_filter).toBe(false);
    expect(behind?.exposure_value_ev100.likely).toBeLessThan((bare?.exposure_value_ev100.likely ?? 0) - 0.5);
  });
});

describe("the depth over time", () => {
  const profile = new Profile([
    { time_s: 0, depth_m: 0 },
    { time_s: 100, depth_m: 20 },
    { time_s: 200, depth_m: 6 },
    { time_s: 300, depth_m: 18 },
    { time_s: 400, depth_m: 3 },
  ]);

  it("is drawn straight between samples, as UDDF 3.2 has it of waypoints", () => {
    expect([0, 25, 100, 150, 400].map((time_s) => profile.depthAt(time_s))).toEqual([0.1, 5, 20, 13, 3]);
  });

  it("was first at a depth going down, and coming up from the deepest point of all", () => {
    expect(profile.downTo_s(10)).toBe(50);
    expect(profile.upTo_s(13)).toBe(150);
    expect(profile.upTo_s(2)).toBeUndefined();
    expect(profile.downTo_s(21)).toBeUndefined();
  });

  it("has the filmed depths of its clips and of what was done, or without any those of the dive from 2 m down", () => {
    const { samples } = profile;
    expect(filmedDepths(samples, [{ from_s: 150, to_s: 200 }])).toEqual({ min_depth_m: 6, max_depth_m: 13 });
    expect(filmedDepths(samples, [{ from_s: 150, to_s: 200 }], [{ time_s: 100 }])).toEqual({
      min_depth_m: 6,
      max_depth_m: 20,
    });
    expect(filmedDepths(samples, [])).toEqual({ min_depth_m: 2, max_depth_m: 20 });
  });
});

it("steps of the plan that the dive did not come back to are told", () => {
  const plan = planOf(
    { balance_tolerance_delta_e00: 3 },
    {
      clips: [],
      samples: [
        { time_s: 0, depth_m: 3 },
        { time_s: 900, depth_m: 25 },
      ],
    },
    "II",
  );
  const { reasons, balance_depths_ascending_m } = diveTimeline(plan);
  expect(balance_depths_ascending_m.length).toBeGreaterThan(0);
  expect(codes(reasons)).toContain("timeline_not_passed");
});

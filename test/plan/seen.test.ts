// Plans that once contradicted themselves, flipped, or passed over what the caller had: each as the dive it was asked for.
import { describe, expect, it } from "vitest";
import { planFor } from "./asked.js";
import { faultsIn, type Step } from "./plan-checks.js";

const blue = (visibility_m: number, sun_elevation_deg: number, min_depth_m: number, max_depth_m: number) => ({
  visibility_m,
  water_hue: "blue",
  sun_elevation_deg,
  min_depth_m,
  max_depth_m,
});
const reef = (min_depth_m: number, max_depth_m: number, sun_elevation_deg = 60) => ({
  water_type: "IB",
  sun_elevation_deg,
  min_depth_m,
  max_depth_m,
});
const strong = (distance_m: number) => ({
  ...blue(25, 60, 8, 15),
  subject_distance_m: 0.5,
  frame_rate_fps: 50,
  lamps: [{ flux_lm: 15000, count: 2, distance_m }],
});
const lit = { flux_lm: 4000, count: 2, distance_m: 0.8 };
const codes = (plan: { steps: Step[] }) => plan.steps.map(({ code }) => code);
const stepOf = (plan: { steps: Step[] }, code: string) => plan.steps.find((step) => step.code === code);
const toldClose = (...plans: { close_calls: { code: string }[] }[]) =>
  plans.flatMap(({ close_calls }) => close_calls.map(({ code }) => code));

describe("plans that once contradicted themselves", () => {
  it("neutral density at the start is still there, or off, where the exposure is opened, and closes again", () => {
    const plan = planFor({ ...blue(20, 65, 0.5, 5), f_number: 2.8, frame_rate_fps: 60 });
    expect(faultsIn(plan)).toEqual([]);
    expect(codes(plan)).toContain("neutral_density");
    const start = stepOf(plan, "start_exposure")?.parameters;
    const deep = stepOf(plan, "deep_exposure")?.parameters;
    expect(deep.behind).toEqual(start.behind);
    expect(codes(plan)).toContain("shallow_exposure");
  });

  it("neutral density that can come off does, and goes on again coming up", () => {
    const plan = planFor({
      ...reef(0.5, 30, 70),
      filter_change_underwater: "clip_on",
      f_number: 5.6,
      kit: [],
    });
    expect(faultsIn(plan)).toEqual([]);
    expect(codes(plan)).toEqual(expect.arrayContaining(["neutral_density", "neutral_off", "neutral_on"]));
  });

  it("a filter that comes off going down and goes on coming up is on the lens where filming begins, and the plan says so", () => {
    for (const dive of [
      {
        ...blue(38.6, 18.9, 13.1, 31.3),
        f_number: 2.8,
        filter_kind: "magenta",
        filter_density: 0.566,
        finish: "matched",
      },
      { ...reef(16.1, 36.5, 41.8), water_type: "I", f_number: 2.8, frame_rate_fps: 50, finish: "matched" },
    ]) {
      const plan = planFor({ ...dive, filter_change_underwater: "clip_on" });
      expect(faultsIn(plan)).toEqual([]);
      if (codes(plan).includes("filter_out")) {
        const [first] = codes(plan).filter((code) => code === "filter_in" || code === "filter_out");
        expect(stepOf(plan, "carry_filter")?.parameters.from_start).toBe(first === "filter_out");
      }
    }
  });

  it("lights with filters on them are checked in the same line: 12 at most", () => {
    const plan = planFor({
      water_type: "I",
      sun_elevation_deg: 48.1,
      min_depth_m: 6.83,
      max_depth_m: 22.8,
      balance_tolerance_delta_e00: 2,
      filter_change_underwater: "clip_on",
      lamps: [{ flux_lm: 1100, count: 1, distance_m: 1.03, filter_kind: "green", filter_density: 1.16 }],
    });
    expect(faultsIn(plan)).toEqual([]);
    expect(plan.steps.length).toBeLessThanOrEqual(12);
  });

  it("strong lamps close: two centimetres change nothing that is not told as a close call", () => {
    for (const at of [0.3, 0.32, 0.34, 0.36, 0.38, 0.4, 0.45, 0.47]) {
      const [near, far] = [planFor(strong(at)), planFor(strong(at + 0.02))];
      expect(faultsIn(near)).toEqual([]);
      if (near.lamp_plan !== far.lamp_plan) expect(toldClose(near, far)).toContain("close_lamps");
    }
  });

  it("no red below the red", () => {
    for (const [from, to] of [
      [18, 30],
      [25, 35],
      [30, 45],
    ] as const) {
      const plan = planFor(reef(from, to, 50));
      expect(faultsIn(plan)).toEqual([]);
    }
    expect(planFor(reef(30, 45)).filter_kind).toBe("none");
    expect(stepOf(planFor(reef(30, 45)), "grade_red")).toBeUndefined();
  });

  it("no lamp filter at the edge of what can be asked for", () => {
    for (const water_type of ["II", "5C", "9C"]) {
      const plan = planFor({
        water_type,
        sun_elevation_deg: 60,
        depth_m: 8,
        lamps: [{ ...lit, distance_m: 1.2 }],
      });
      expect(faultsIn(plan)).toEqual([]);
    }
  });

  it("no waiting for a sun that takes light away", () => {
    for (const sun_elevation_deg of [10, 15, 70, 85]) {
      expect(faultsIn(planFor({ water_type: "5C", sun_elevation_deg, depth_m: 16, max_iso: 400 }))).toEqual(
        [],
      );
    }
  });

  it("balances are as far apart as a hand can make them, and say what that costs", () => {
    const plan = planFor({ ...reef(5, 18, 40), balance_tolerance_delta_e00: 2 });
    expect(faultsIn(plan)).toEqual([]);
    expect(stepOf(plan, "balance_again")?.parameters).toMatchObject({ asked: { tolerance: 2 } });
  });

  it("no single balance that serves with a strong cast", () => {
    const plan = planFor({ ...reef(1, 30), white_balance_max_cct_K: 5600, white_balance_max_duv: 0.005 });
    expect(faultsIn(plan)).toEqual([]);
    const reasons = plan.reasons.map((r: Step) => r.code);
    expect(reasons).toContain("balance_falls_short");
    expect(reasons).not.toContain("one_balance_serves");
  });

  it.each([
    ["magenta", 1.5, "mount_filter"],
    ["red", 1.2, "keep_filter"],
    ["green", 0.6, "mount_filter"],
  ])(
    "a %s filter of %d on the lens is named, and used only where it is right",
    (filter_kind, filter_density, code) => {
      const plan = planFor({ ...reef(5, 18, 40), filter_kind, filter_density });
      expect(faultsIn(plan)).toEqual([]);
      expect(codes(plan)).toContain(code);
      const named = stepOf(plan, code)?.parameters;
      expect(code === "keep_filter" ? named.filter : named.instead_of).toEqual({
        kind: filter_kind,
        density: filter_density,
      });
    },
  );

  it("a filter on the lens that the dive has no use for is refused by name", () => {
    const plan = planFor({
      water_type: "IB",
      sun_elevation_deg: 40,
      depth_m: 1.5,
      filter_kind: "red",
      filter_density: 0.8,
    });
    expect(faultsIn(plan)).toEqual([]);
    expect(stepOf(plan, "no_filter")?.parameters.instead_of).toEqual({ kind: "red", density: 0.8 });
  });

  it("filters on the lamps are named: kept, bettered or taken off", () => {
    for (const filter_density of [0.3, 0.9, 1.2]) {
      const lamps = [{ ...lit, filter_kind: "blue", filter_density }];
      for (const daylight of [
        { ...reef(12, 12, 50) },
        { water_type: "IB", daylight_basis: "none", depth_m: 12 },
      ]) {
        expect(faultsIn(planFor({ ...daylight, lamps }))).toEqual([]);
      }
    }
  });

  it("lamps that stay on the rig are packed", () => {
    const plan = planFor({ ...reef(12, 12, 50), lamps: [lit] });
    expect(plan.lamp_plan).toBe("lamps_off");
    expect(faultsIn(plan)).toEqual([]);
  });

  it("at night no kelvin setting is both useless and advised", () => {
    const plan = planFor({ water_type: "IB", daylight_basis: "none", depth_m: 15, lamps: [lit] });
    expect(faultsIn(plan)).toEqual([]);
    const said = plan.steps.map((s: { text: string; why: string }) => `${s.text} ${s.why}`).join(" ");
    expect(said).not.toMatch(/kelvin settings do not/i);
  });
});

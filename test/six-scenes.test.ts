// The scenes that the service must answer, each with what it must say, asked of the planner itself.

import {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_IN_THE_SHALLOWS,
  REEF_WITH_LAMPS,
} from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { exposureLoss, filterChoice, mixedLight } from "../packages/planner/src/index.js";
import { saidAttenuation, saidChoice, saidExposure, saidMixed } from "./support/said.js";

/** Exposure value of the subject with the haze over it: what the camera is exposed for. */
const metered = ({
  exposure_value_ev100: subject,
  haze_gain_stops: haze,
}: ReturnType<typeof exposureLoss>["depths"][number]) => subject.likely + (haze?.likely ?? 0);

const codes = (answer: { reasons: { code: string }[] }) => answer.reasons.map((r) => r.code);

describe("outer reef, morning: IB, sun 40 degrees, 5 to 18 m, lamps off", () => {
  const answer = filterChoice(OUTER_REEF_MORNING);

  it("asks for red of a stated density over the whole range, clearly", () => {
    expect(answer.filter_kind).toBe("red");
    expect(answer.filter_density).toBeGreaterThan(0.5);
    expect(answer.filter_density).toBeLessThan(1.6);
    expect(answer.verdict).toBe("clear");
    expect(answer.serves_min_depth_m).toBe(5);
    expect(answer.serves_max_depth_m).toBe(18);
  });

  it("halves the colour error, costs stops that are there, and says why", () => {
    expect(answer.colour_error_delta_e00.high).toBeLessThan(answer.colour_error_without_delta_e00.high);
    expect(answer.colour_error_delta_e00.likely).toBeLessThan(
      0.7 * answer.colour_error_without_delta_e00.likely,
    );
    expect(answer.filter_loss_stops.likely).toBeGreaterThan(1);
    const filtered = exposureLoss({
      ...OUTER_REEF_MORNING,
      filter_kind: "red",
      filter_density: answer.filter_density ?? 0,
    });
    expect(new Set(filtered.depths.map((d) => d.verdict))).toEqual(new Set(["fits"]));
    expect(codes(answer)).toEqual(expect.arrayContaining(["filter_earns", "filter_adds_no_red"]));
    expect(answer.reasons.find((r) => r.code === "filter_trade_rule_blue")?.basis).toBe("common_practice");
  });
});

describe("harbour wall, afternoon: 3C, sun 50 degrees, 4 to 12 m", () => {
  it("asks for magenta, clearly, with the sun behind the camera: the light lasts to its deep end", () => {
    const answer = filterChoice(HARBOUR_WALL_AFTERNOON);
    expect(answer.filter_kind).toBe("magenta");
    expect(answer.filter_density).toBeGreaterThan(0.3);
    expect(answer.verdict).toBe("clear");
    // Red leaves more green in; none leaves far more.
    expect(answer.runner_up.filter_kind).toBe("red");
    expect(answer.colour_error_delta_e00.likely).toBeLessThan(
      0.5 * answer.colour_error_without_delta_e00.likely,
    );
    expect(new Set(answer.depths.map((d) => d.best_filter_kind))).toEqual(new Set(["magenta"]));
  });

  it("is magenta for a profiled grade, too, and at the deep end less of it: noise is what a grade brings out", () => {
    const answer = filterChoice({ ...HARBOUR_WALL_AFTERNOON, finish: "matched" });
    expect(answer.filter_kind).toBe("magenta");
    expect(answer.verdict).toBe("clear");
    expect(answer.runner_up.filter_kind).toBe("none");
    const best = answer.depths.map((d) => d.best_filter_density ?? 0);
    expect(best[best.length - 1]).toBeLessThan(Math.max(...best));
  });
});

describe("night wreck: no daylight, two 4000 lm lamps at 0.8 m, 15 m", () => {
  it("mounts no lens filter", () => {
    const answer = filterChoice(NIGHT_WRECK);
    expect(answer.filter_kind).toBe("none");
    expect(answer).not.toHaveProperty("filter_density");
    expect(codes(answer)[0]).toBe("lamps_are_the_only_light");
  });

  it("balances to the lamps and names what the water between still takes, most of it red", () => {
    const answer = mixedLight(NIGHT_WRECK);
    expect(answer.balance_to).toBe("lamps");
    const [depth] = answer.depths;
    expect(depth.verdict).toBe("lamps_only");
    const red = depth.lamp_red_water_loss_stops;
    const green = depth.lamp_green_water_loss_stops;
    expect(red?.likely).toBeGreaterThan(0.3);
    expect(red?.likely).toBeGreaterThan(1.5 * (green?.likely ?? Number.NaN));
    expect(depth.daylight_illuminance_lx).toEqual({ low: 0, likely: 0, high: 0 });
    // Two lamps of 4000 lm, half of the middle's intensity at 50 degrees off (CIE e-ILV 17-27-077): 2 * 4000 * 2.568 / 2 pi / 0.64 = 5110 lx
    // in the middle of the beams without water, which takes a little, as a hand's aim does.
    expect(depth.lamp_illuminance_lx.likely).toBeGreaterThan(0.75 * 5110);
    expect(depth.lamp_illuminance_lx.likely).toBeLessThan(5110);
  });

  it("cautions that lamps belong in water and not into eyes", () => {
    const cautions = mixedLight(NIGHT_WRECK).cautions.map((c) => c.code);
    expect(cautions).toEqual(
      expect.arrayContaining(["lamps_in_water_only", "lamps_not_into_eyes", "not_a_dive_planner"]),
    );
  });
});

describe("reef with lamps: IB, 12 m, sun 50 degrees, the same lamps, upright subject", () => {
  const answer = mixedLight(REEF_WITH_LAMPS);
  const [depth] = answer.depths;

  it("weighs lamp against ambient per channel: red to the lamps, blue to the sun (by hand: see the planner's own test)", () => {
    const [red, green, blue] = [
      depth.red_lamp_over_daylight_stops?.likely ?? Number.NaN,
      depth.green_lamp_over_daylight_stops?.likely ?? Number.NaN,
      depth.blue_lamp_over_daylight_stops?.likely ?? Number.NaN,
    ];
    expect(red).toBeGreaterThan(green);
    expect(green).toBeGreaterThan(blue);
    // With the sun behind the camera a card gets more daylight than one that looks anywhere: about four times the lamps.
    expect(Math.abs(green)).toBeLessThan(2.5);
  });

  it("names the split after balancing to ambient, the red excess, and a way out that ends it", () => {
    expect(depth.verdict).toBe("lights_fight");
    expect(depth.split_delta_e00?.likely).toBeGreaterThan(5);
    expect(depth.red_excess_stops?.likely).toBeGreaterThan(0);
    expect(depth.ways_out[0].split_left_delta_e00).toBeLessThan(1);
    expect(depth.ways_out.map((w) => w.way)).toEqual(expect.arrayContaining(["lamps_off", "lamp_filter"]));
    const off = mixedLight({ ...REEF_WITH_LAMPS, lamps: [] });
    expect(off.depths[0].verdict).toBe("daylight_only");
  });
});

describe("the reef at 1.5 m", () => {
  it("mounts nothing: a filter would overshoot or only do what a neutral one does", () => {
    const answer = filterChoice(REEF_IN_THE_SHALLOWS);
    expect(answer.filter_kind).toBe("none");
    expect(codes(answer)).toContain("no_filter_earns");
    // The best filter changes the error by less than anyone sees; by how much less is within what is not known.
    expect(Math.abs(answer.runner_up.loses_by_delta_e00.likely)).toBeLessThan(1);
    const graded = filterChoice({ ...REEF_IN_THE_SHALLOWS, finish: "matched" });
    expect([graded.filter_kind, graded.verdict]).toEqual(["none", "clear"]);
    expect(Math.abs(graded.runner_up.loses_by_delta_e00.likely)).toBeLessThan(0.5);
  });

  it("even at noon, fixed too bright, where a filter would only keep bright parts from clipping", () => {
    const answer = filterChoice({ ...REEF_IN_THE_SHALLOWS, sun_elevation_deg: 70, iso: 400, f_number: 5.6 });
    expect(answer.filter_kind).toBe("none");
    expect(answer.neutral_density).toBeGreaterThan(0.3);
    expect(codes(answer)).toContain("light_is_too_much");
  });
});

describe("dark and green: 5C, sun 15 degrees, 14 m, ISO 800 at most", () => {
  const answer = exposureLoss(DARK_AND_GREEN);
  const [depth] = answer.depths;

  it("does not fit, and says how much is missing", () => {
    expect(depth.verdict).toBe("too_dark");
    expect([depth.iso, depth.f_number]).toEqual([800, 2.8]);
    const missing = depth.shortfall_stops;
    expect(missing?.likely).toBeGreaterThan(0.3);
    expect(missing?.low).toBeLessThanOrEqual(missing?.likely ?? 0);
    // By hand: EV of ISO 800, f/2.8, 1/50 s is log2(7.84 * 50) - 3 = 5.615 at ISO 100.
    expect(missing?.likely).toBeCloseTo(5.6147 - metered(depth), 3);
  });

  it("says that a filter would make it worse, and mounts none", () => {
    expect(codes(answer)).toContain("any_filter_would_worsen");
    expect(filterChoice(DARK_AND_GREEN).filter_kind).toBe("none");
    const filtered = exposureLoss({ ...DARK_AND_GREEN, filter_kind: "magenta", filter_density: 0.6 })
      .depths[0];
    expect(filtered.shortfall_stops?.likely).toBeGreaterThan((depth.shortfall_stops?.likely ?? 0) + 0.5);
  });
});

describe("a clear reef at noon with f/5.6, ISO 400 and 1/50 s fixed", () => {
  it("is too bright: the answer is a smaller aperture or neutral density, not ISO", () => {
    const answer = exposureLoss(BRIGHT_REEF);
    const [depth] = answer.depths;
    expect(depth.verdict).toBe("too_bright");
    expect(depth.f_number_needed).toBeGreaterThan(5.6);
    expect(depth.neutral_density_needed).toBeGreaterThan(0);
    expect(depth.ways_to_pay.map((w) => w.way)).toEqual(
      expect.arrayContaining(["aperture", "neutral_density"]),
    );
    expect(depth.ways_to_pay.map((w) => w.way)).not.toContain("iso");
    // By hand: EV of the settings is log2(31.36 * 50) - 2 = 8.615 at ISO 100.
    expect(depth.excess_stops?.likely).toBeCloseTo(metered(depth) - 8.6147, 3);
  });
});

describe("every scene, every question", () => {
  const scenes = {
    OUTER_REEF_MORNING,
    HARBOUR_WALL_AFTERNOON,
    NIGHT_WRECK,
    REEF_WITH_LAMPS,
    REEF_IN_THE_SHALLOWS,
    DARK_AND_GREEN,
    BRIGHT_REEF,
  };

  /** Paths to values that JSON would lose or change. */
  function unsound(value: unknown, path = ""): string[] {
    if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} is ${value}`];
    if (value === undefined || value === null) return [`${path} is ${value}`];
    if (typeof value !== "object") return [];
    return Object.entries(value).flatMap(([key, v]) => unsound(v, `${path}/${key}`));
  }
  /** Percentiles out of order. */
  function disordered(value: unknown, path = ""): string[] {
    if (typeof value !== "object" || value === null) return [];
    const e = value as { low?: unknown; likely?: unknown; high?: unknown };
    const here =
      typeof e.low === "number" && typeof e.likely === "number" && typeof e.high === "number"
        ? e.low <= e.likely && e.likely <= e.high
          ? []
          : [path]
        : [];
    return [...here, ...Object.entries(value).flatMap(([key, v]) => disordered(v, `${path}/${key}`))];
  }

  it.each(Object.entries(scenes))(
    "%s: finite numbers, ordered percentiles, reasons, cautions, causes and sources",
    (_, scene) => {
      for (const decide of [saidAttenuation, saidChoice, saidExposure, saidMixed]) {
        const answer = decide(scene);
        expect(unsound(answer)).toEqual([]);
        expect(disordered(answer)).toEqual([]);
        expect(answer.reasons.length).toBeGreaterThan(0);
        expect(answer.cautions.map((c) => c.code)).toContain("not_a_dive_planner");
        expect(answer.sources.length).toBeGreaterThan(0);
        for (const { text } of [...answer.reasons, ...answer.cautions]) {
          expect(text).toMatch(/^[A-Z].*[.]$/);
          expect(text).not.toMatch(/NaN|undefined|Infinity|-0\b(?!\.)/);
        }
        expect(decide(scene)).toEqual(answer);
      }
    },
  );
});

/**
 * Rules of the trade (common practice, no published source), each tried on every water type to which it applies. Where the model
 * agrees a test says so; where it does not, a test says where, and why.
 */

import {
  atNight,
  daylightScene,
  gradedScene,
  NIGHT_WRECK,
  REEF_WITH_LAMPS,
  TWO_LAMPS,
} from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import {
  colourRecovery,
  diveAdvice,
  exposureLoss,
  filterChoice,
  mixedLight,
} from "../packages/planner/src/index.js";

const BLUE = ["I", "IA", "IB", "II", "III"] as const;
const GREEN = ["1C", "3C", "5C"] as const;
/** Water in which blue and not red is the missing channel. */
const AMBER = ["7C", "9C"] as const;
const ALL = [...BLUE, ...GREEN, ...AMBER];
const SUN = 50;

const filterAt = (type: string, depth_m: number) => filterChoice(daylightScene(type, SUN, depth_m));
const litAt = (type: string, depth_m: number, flux_lm = TWO_LAMPS.flux_lm) =>
  mixedLight({ ...daylightScene(type, SUN, depth_m), lamps: [{ ...TWO_LAMPS, flux_lm }] }).depths[0];

describe("red in blue water, from about 3 m down", () => {
  it.each([
    ["I", ["none", "none", "red"]],
    ["IA", ["none", "none", "red"]],
    ["IB", ["none", "red", "red"]],
    ["II", ["none", "red", "red"]],
    ["III", ["none", "red", "red"]],
  ] as const)("%s: %j at 1, 2 and 3 m, and red below, straight from the camera", (type, shallow) => {
    expect([1, 2, 3].map((depth) => filterAt(type, depth).filter_kind)).toEqual(shallow);
    for (const depth of [4, 5, 8, 12]) expect(filterAt(type, depth).filter_kind).toBe("red");
  });

  it.each(["I", "IA", "IB", "II"])(
    "%s: a profiled grade does without at 1 to 3 m, and takes red from 4 m down: a metre deeper, or two",
    (type) => {
      const graded = (depth: number) => filterChoice(gradedScene(type, SUN, depth));
      expect([1, 2, 3].map((depth) => graded(depth).filter_kind)).toEqual(["none", "none", "none"]);
      for (const depth of [4, 5, 8, 12]) expect(graded(depth).filter_kind).toBe("red");
      // At 3 and 4 m the choice hardly matters to it.
      for (const depth of [3, 4])
        expect(Math.abs(graded(depth).runner_up.loses_by_delta_e00.likely)).toBeLessThan(1);
    },
  );

  it.each(BLUE)(
    "%s: higher up the red filter at hand is left off: it leaves more error than none",
    (type) => {
      const [depth] = filterChoice({
        ...daylightScene(type, SUN, 1),
        kit: [{ id: "red", item: "lens_filter", filter_kind: "red", filter_density: 0.9 }],
      }).depths;
      expect(depth.best_filter_kind).toBe("none");
    },
  );
});

describe("the deeper the denser, and the denser the more light it costs", () => {
  it.each([
    ["I", [4, 5, 6, 7, 8, 10]],
    ["IA", [4, 5, 6, 7, 8, 10]],
    ["IB", [4, 5, 6, 7, 8, 10]],
    ["II", [4, 5, 6, 7, 8, 10]],
    ["III", [5, 6, 7, 8]],
    ["1C", [3, 4, 5, 6, 7]],
    ["3C", [2, 3, 4]],
    ["5C", [3, 4, 5]],
  ] as const)("%s: at %j m; farther down the light left pays for no more density", (type, depths) => {
    const answers = depths.map((depth) => filterAt(type, depth));
    for (let i = 1; i < answers.length; i++) {
      expect(answers[i].filter_density ?? 0).toBeGreaterThanOrEqual(answers[i - 1].filter_density ?? 0);
    }
    const [first, last] = [answers[0], answers[answers.length - 1]];
    expect(last.filter_density ?? 0).toBeGreaterThan(first.filter_density ?? 0);
    expect(last.filter_loss_stops.likely).toBeGreaterThan(first.filter_loss_stops.likely);
  });

  it.each(ALL)("%s: each step of density is paid with ISO or aperture", (type) => {
    const kind = BLUE.some((blue) => blue === type) ? "red" : "magenta";
    const paid = [0.3, 0.6, 0.9, 1.2].map((filter_density) => {
      const scene = { ...daylightScene(type, SUN, 4), filter_kind: kind, filter_density } as const;
      const { iso, f_number } = exposureLoss(scene).depths[0];
      return iso / f_number ** 2;
    });
    expect(paid).toEqual([...paid].sort((a, b) => a - b));
    expect(Math.log2(paid[3] / paid[0])).toBeGreaterThan(1);
  });
});

describe("where lamps are the only light", () => {
  it.each(ALL)("%s: no filter on the lens, balance to the lamps; depth shifts nothing", (type) => {
    const night = (depth_m: number) => ({
      ...atNight(daylightScene(type, SUN, depth_m)),
      lamps: [{ ...TWO_LAMPS, distance_m: 0.5 }],
      subject_distance_m: 0.5,
    });
    expect(filterChoice(night(15)).filter_kind).toBe("none");
    const [deep] = mixedLight(night(30)).depths;
    expect(mixedLight(night(30)).balance_to).toBe("lamps");
    expect({ ...deep, depth_m: 5 }).toEqual(mixedLight(night(5)).depths[0]);
  });
});

describe("balanced to daylight, whatever a white lamp lights turns too red", () => {
  it.each([...BLUE, ...GREEN])("%s: it does, more so the deeper", (type) => {
    const excess = [3, 5, 8, 12].map((depth) => litAt(type, depth).red_excess_stops?.likely ?? Number.NaN);
    expect(excess[0]).toBeGreaterThan(0.03);
    expect(excess).toEqual([...excess].sort((a, b) => a - b));
  });

  it.each(AMBER)(
    "%s: it does not: daylight there lacks blue, and the lamps' light turns too blue",
    (type) => {
      const answer = litAt(type, 5);
      expect(answer.red_excess_stops?.likely).toBeLessThan(0.05);
      const { blue_lamp_over_daylight_stops: blue, red_lamp_over_daylight_stops: red } = answer;
      expect(blue?.likely).toBeGreaterThan((red?.likely ?? Number.NaN) + 0.5);
      expect(answer.split_delta_e00?.likely).toBeGreaterThan(5);
    },
  );
});

describe("a filter on the lamp that matches daylight removes the split", () => {
  it.each([...BLUE, ...GREEN])(
    "%s: of plain kinds the nearest takes away three quarters of it or more, to 8 m",
    (type) => {
      for (const depth of [5, 8]) {
        // Bright enough to fight with daylight in the shallows of clear water, too.
        const { split_delta_e00, ways_out } = litAt(type, depth, 6000);
        const left = ways_out.find(({ way }) => way === "lamp_filter")?.split_left_delta_e00;
        expect(left).toBeLessThan(0.35 * (split_delta_e00?.likely ?? Number.NaN));
      }
    },
  );

  it("9C: a blue or a green one does not, since daylight there is amber", () => {
    const { ways_out } = litAt("9C", 5);
    expect(ways_out.find(({ way }) => way === "lamp_filter")?.split_left_delta_e00).toBeGreaterThan(5);
  });
});

describe("what the sensor never recorded in red cannot be brought back", () => {
  // The filter's 3 stops, over the 0.38 stop a metre by which red at 625 nm fades faster than green at 525 in type I (Jerlov 1976).
  it.each(ALL)(
    "%s: red ends at a depth, with a filter at most 8 m deeper, and there it ends as well",
    (type) => {
      const { red_gone_from_without_filter_depth_m: bare, red_gone_from_with_filter_depth_m: filtered } =
        colourRecovery({ ...daylightScene(type, SUN, 10), filter_kind: "red", filter_density: 0.9 });
      expect(bare?.likely).toBeGreaterThan(3);
      expect(bare?.likely).toBeLessThan(35);
      const deeper = (filtered?.likely ?? Number.NaN) - (bare?.likely ?? Number.NaN);
      expect(deeper).toBeGreaterThan(0);
      expect(deeper).toBeLessThan(8);
    },
  );
});

describe("lamps", () => {
  it("stay on the rig even when they are left off, so that its trim stays", () => {
    const { steps, cautions, lamp_plan } = diveAdvice(REEF_WITH_LAMPS);
    expect(lamp_plan).toBe("lamps_off");
    expect(steps.map(({ code }) => code)).toContain("lamps_off");
    expect(cautions.map(({ code }) => code)).toContain("lamps_stay_on_rig");
  });

  it("run in water only and shine into no eyes: said wherever lamps are", () => {
    for (const scene of [NIGHT_WRECK, REEF_WITH_LAMPS]) {
      const codes = diveAdvice(scene).cautions.map(({ code }) => code);
      expect(codes).toEqual(expect.arrayContaining(["lamps_in_water_only", "lamps_not_into_eyes"]));
    }
    expect(diveAdvice(NIGHT_WRECK).steps.map(({ code }) => code)).toContain("lamps_off_before_air");
  });
});

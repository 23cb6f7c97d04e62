import { atNight, daylightScene, NIGHT_WRECK, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { backscattering, FIRST_NM, PURE_WATER_SCATTERING_PER_M, STEP_NM } from "@sunfathom/optics";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { castOfRaw } from "../camera/cast.js";
import { sensorOf } from "../camera/sensor.js";
import { rawOf, sensorProfile } from "../camera/sensor-profile.js";
import { conditionsOf } from "../light/conditions.js";
import { cardDaylightAt } from "../light/daylight-at-depth.js";
import { CLEAR_LAMPS, lampLightAt, underwater } from "../light/underwater.js";
import type { MixedLightAtDepth, WayOutKind } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { lightsAt, VISIBLE_SPLIT_DELTA_E00, verdictAt } from "./lights.js";
import { mixedLight } from "./mixed-light.js";
import { numbersAt } from "./numbers.js";
import { waysOut } from "./ways-out.js";

const TYPES = ["I", "IB", "II", "III", "1C", "3C", "5C", "7C", "9C"];
const lit = (type: string, sun: number, depth: number, change: Partial<typeof TWO_LAMPS> = {}): Scene => ({
  ...daylightScene(type, sun, depth),
  lamps: [{ ...TWO_LAMPS, ...change }],
});
const first = (scene: Scene): MixedLightAtDepth => mixedLight(scene).depths[0];
const wayOf = (scene: Scene, kind: WayOutKind) => first(scene).ways_out.find(({ way }) => way === kind);
const worldOf = (scene: Scene, daylightScale = 1) =>
  underwater(conditionsOf(scene), { ...NOMINAL, daylightScale });
const anyScene = fc.record({
  type: fc.constantFrom(...TYPES),
  sun: fc.integer({ min: 15, max: 80 }),
  depth: fc.double({ min: 2, max: 25, noNaN: true }),
  distance: fc.double({ min: 0.3, max: 2, noNaN: true }),
});

describe("twice the light of both", () => {
  it("changes no verdict, no split and no way out: only ratios count (law)", () => {
    fc.assert(
      fc.property(anyScene, ({ type, sun, depth, distance }) => {
        const scene = lit(type, sun, depth, { distance_m: distance });
        const once = worldOf(scene);
        const twice = worldOf(lit(type, sun, depth, { distance_m: distance, flux_lm: 8000 }), 2);
        expect(verdictAt(twice, depth)).toBe(verdictAt(once, depth));
        const [a, b] = [once, twice].map((world) => numbersAt(world, depth, true));
        for (const key of [
          "red",
          "green",
          "blue",
          "split",
          "splitToLamps",
          "redExcess",
          "log2LitHaze",
        ] as const) {
          expect(b[key]).toBeCloseTo(a[key], 9);
        }
        expect(b.log2LampLux - a.log2LampLux).toBeCloseTo(1, 9);
        const [ours, doubled] = [once, twice].map((world) => waysOut({ world, ...lightsAt(world, depth) }));
        expect(doubled.map((w) => w.way)).toEqual(ours.map((w) => w.way));
        doubled.forEach((w, i) => {
          expect(w.split_left_delta_e00).toBeCloseTo(ours[i].split_left_delta_e00, 6);
          expect(w.cost_stops).toBeCloseTo(ours[i].cost_stops, 9);
        });
      }),
      { seed: 8, numRuns: 10 },
    );
  });
});

describe("the ways out", () => {
  it("come with the least split first, the cheapest of equals first, and each leaves less than the fight itself", () => {
    fc.assert(
      fc.property(anyScene, ({ type, sun, depth, distance }) => {
        const answer = first(lit(type, sun, depth, { distance_m: distance }));
        const { ways_out, verdict } = answer;
        if (verdict !== "lights_fight") {
          expect(ways_out).toEqual([]);
          return;
        }
        for (let i = 1; i < ways_out.length; i++) {
          const [a, b] = [ways_out[i - 1], ways_out[i]];
          expect(a.split_left_delta_e00).toBeLessThanOrEqual(b.split_left_delta_e00);
          if (a.split_left_delta_e00 === b.split_left_delta_e00)
            expect(a.cost_stops).toBeLessThanOrEqual(b.cost_stops);
        }
        const left = (way: WayOutKind) => ways_out.find((w) => w.way === way)?.split_left_delta_e00;
        expect(left("lamp_filter")).toBeLessThan(answer.split_delta_e00?.likely ?? Number.NaN);
        expect(left("lamps_off")).toBe(0);
        expect(left("come_closer") ?? 0).toBeLessThanOrEqual(VISIBLE_SPLIT_DELTA_E00);
      }),
      { seed: 9, numRuns: 14 },
    );
  });

  it.each([
    ["IB", "blue"],
    ["II", "blue"],
    ["3C", "green"],
    ["5C", "green"],
  ])("in %s the filter for the lamps is %s (common practice, no published source)", (type, kind) => {
    expect(wayOf(lit(type, 50, 8), "lamp_filter")?.lamp_filter_kind).toBe(kind);
  });

  it("the curve asked of the lamp filter makes the lamps' light daylight's, wavelength by wavelength (exact)", () => {
    for (const type of ["IB", "3C"]) {
      const scene = lit(type, 50, 8);
      const world = worldOf(scene);
      const daylight = cardDaylightAt(world, 8);
      const lamps = lampLightAt(world, CLEAR_LAMPS);
      const curve = wayOf(scene, "lamp_filter")?.lamp_filter_transmittance ?? [];
      const scales = curve.map(({ wavelength_nm, transmittance }) => {
        const i = (wavelength_nm - FIRST_NM) / STEP_NM;
        return (lamps[i] * transmittance) / daylight[i];
      });
      expect(scales.length).toBe(9);
      for (const scale of scales) expect(scale / scales[0]).toBeCloseTo(1, 12);
      expect(Math.max(...curve.map((s) => s.transmittance))).toBe(1);
    }
  });

  it("the flux left of each lamp is what its filter passes, so the subject loses as much lamp light", () => {
    const way = wayOf(REEF_WITH_LAMPS, "lamp_filter");
    const { lamp_filter_kind: filter_kind, lamp_filter_density: filter_density } = way ?? {};
    if (!filter_kind || filter_density === undefined) throw new Error("no lamp filter");
    const filtered = first({ ...REEF_WITH_LAMPS, lamps: [{ ...TWO_LAMPS, filter_kind, filter_density }] });
    const lux = filtered.lamp_illuminance_lx.likely / first(REEF_WITH_LAMPS).lamp_illuminance_lx.likely;
    // Over 0.8 m of water the filtered light fades a little otherwise.
    expect((way?.lamp_flux_left_lm?.[0] ?? 0) / 4000 / lux).toBeCloseTo(1, 1);
  });
});

describe("the split, by the arithmetic of casts", () => {
  const worked = () => {
    const world = worldOf(REEF_WITH_LAMPS);
    const profile = sensorProfile(sensorOf({}, { crosstalkSd: 0 }));
    const day = rawOf(profile, cardDaylightAt(world, 12));
    const lamp = rawOf(profile, lampLightAt(world));
    const both = [day[0] + lamp[0], day[1] + lamp[1], day[2] + lamp[2]] as const;
    return { profile, day, lamp, both, answer: first(REEF_WITH_LAMPS) };
  };

  it("balanced to daylight, to the lamps, and left when balancing to what the subject gets", () => {
    const { profile, day, lamp, both, answer } = worked();
    expect(answer.split_delta_e00?.likely).toBeCloseTo(castOfRaw(profile, day, both), 9);
    expect(answer.split_balanced_to_lamps_delta_e00?.likely).toBeCloseTo(castOfRaw(profile, lamp, day), 9);
    expect(wayOf(REEF_WITH_LAMPS, "balance_to_lamps")?.split_left_delta_e00).toBeCloseTo(
      castOfRaw(profile, lamp, both),
      9,
    );
    expect(castOfRaw(profile, day, day)).toBeCloseTo(0, 9);
    // Half way between lies between.
    expect(answer.split_balanced_between_delta_e00?.likely).toBeLessThan(
      answer.split_balanced_to_lamps_delta_e00?.likely ?? Number.NaN,
    );
  });

  it("red excess: log2 of (1 + lamp / daylight) in red over the same in green", () => {
    const { day, lamp, answer } = worked();
    const byHand = Math.log2((1 + lamp[0] / day[0]) / (1 + lamp[1] / day[1]));
    expect(answer.red_excess_stops?.likely).toBeCloseTo(byHand, 9);
  });

  it("the balance that is advised is the one whose light leads", () => {
    for (const [scene, balance_to] of [
      [NIGHT_WRECK, "lamps"],
      [lit("IB", 50, 12, { distance_m: 0.1 }), "lamps"],
      [lit("IB", 70, 3, { distance_m: 3 }), "daylight"],
      [daylightScene("IB", 50, 12), "daylight"],
    ] as const) {
      expect(mixedLight(scene).balance_to).toBe(balance_to);
    }
  });
});

describe("the zones of a range", () => {
  it("cover it from end to end without overlap, each with another verdict than its neighbour, and agree with the depths", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...TYPES),
        fc.double({ min: 1, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (type, from, length) => {
          const scene = { ...lit(type, 50, from), max_depth_m: from + length };
          const { zones, depths } = mixedLight(scene);
          expect(zones[0].min_depth_m).toBe(from);
          expect(zones[zones.length - 1].max_depth_m).toBeCloseTo(from + length, 9);
          const step = length / Math.min(60, Math.ceil(length / 0.25));
          zones.forEach((zone, i) => {
            expect(zone.max_depth_m).toBeGreaterThanOrEqual(zone.min_depth_m);
            const above = zones[i - 1];
            if (!above) return;
            expect(zone.verdict).not.toBe(above.verdict);
            expect(zone.min_depth_m - above.max_depth_m).toBeCloseTo(step, 9);
          });
          for (const { depth_m, verdict } of depths) {
            const near = zones.filter(
              (z) => depth_m > z.min_depth_m - step && depth_m < z.max_depth_m + step,
            );
            expect(near.map((z) => z.verdict)).toContain(verdict);
          }
        },
      ),
      { seed: 10, numRuns: 8 },
    );
  });

  it("on the way up from where the lamps lead, name in metres where daylight begins to mix in", () => {
    const { zones, reasons } = mixedLight({ ...lit("3C", 40, 3, { distance_m: 0.4 }), max_depth_m: 30 });
    expect(zones.map((z) => z.verdict)).toEqual(["lights_fight", "lamps_lead"]);
    const [fight] = zones;
    expect(reasons.find((r) => r.code === "mixing_zone")?.parameters).toEqual({
      from_m: fight.min_depth_m,
      to_m: fight.max_depth_m,
    });
  });
});

describe("what lamps light that is not the subject", () => {
  it("haze against a grey, where water is clear and short: bb d^2 / (2 * 0.18) times the line of sight's angle at the lamp (closed form)", () => {
    const d = 0.4;
    const scene: Scene = {
      ...atNight(daylightScene("I", 45, 10)),
      subject_distance_m: d,
      lamps: [{ ...TWO_LAMPS, distance_m: d, beam_angle_deg: 178 }],
    };
    const { water } = worldOf(scene);
    const bb = backscattering(water.scattering_per_m, PURE_WATER_SCATTERING_PER_M)[
      (555 - FIRST_NM) / STEP_NM
    ];
    // Lamps stand 0.35 m beside the line of sight (assumed), at most 0.9 of their distance.
    const offset = 0.35;
    const behind = Math.sqrt(d * d - offset * offset);
    const spanned = (Math.atan(behind / offset) + Math.atan((d - behind) / offset)) / offset;
    const byHand = (bb * d * d * spanned) / (2 * 0.18);
    // Attenuation on unlike ways, some 0.1 per metre over 0.2 m, and luminance over the spectrum in place of 555 nm: 10 %.
    expect((first(scene).lit_haze_percent?.likely ?? 0) / (100 * byHand)).toBeGreaterThan(0.9);
    expect((first(scene).lit_haze_percent?.likely ?? 0) / (100 * byHand)).toBeLessThan(1.1);
  });

  it("haze grows with turbidity and with the distance to the subject, and comes with its doubt", () => {
    const haze = (scene: Scene) => first(scene).lit_haze_percent ?? { low: 0, likely: 0, high: 0 };
    const at = (type: string, metres: number) => ({
      ...lit(type, 50, 12, { distance_m: metres }),
      subject_distance_m: metres,
    });
    expect(haze(at("3C", 0.8)).likely).toBeGreaterThan(3 * haze(at("IB", 0.8)).likely);
    expect(haze(at("3C", 1.6)).likely).toBeGreaterThan(haze(at("3C", 0.8)).likely);
    const { low, likely, high } = haze(at("3C", 0.8));
    expect(low).toBeLessThan(0.8 * likely);
    expect(high).toBeGreaterThan(1.25 * likely);
  });

  it("a metre behind the subject: inverse square, 2 log2(1.8 / 0.8) = 2.34 stops, and what a metre of water takes", () => {
    const falloff = first(NIGHT_WRECK).lamp_falloff_1_m_behind_stops ?? Number.NaN;
    const water = falloff - 2 * Math.log2(1.8 / 0.8);
    // Pope & Fry 1997: 0.06 per m at 555 nm is 0.09 stop; 0.34 at 650 nm is 0.49.
    expect(water).toBeGreaterThan(0.08);
    expect(water).toBeLessThan(0.5);
  });
});

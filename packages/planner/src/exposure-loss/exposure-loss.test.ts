import {
  BRIGHT_REEF,
  daylightScene,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  TWO_LAMPS,
} from "@sunfathom/fixtures/scenes";
import { densityToStops, ev100FromDome } from "@sunfathom/optics";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ExposureAtDepth } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { exposureLoss } from "./exposure-loss.js";
import { meteredOnSubject } from "./sensitivity.js";

const at = (scene: Scene): ExposureAtDepth => exposureLoss(scene).depths[0];
const TYPES = ["I", "IB", "II", "III", "1C", "3C", "5C", "7C"];
const REEF = daylightScene("IB", 45, 8);

describe("the budget from the surface to the sensor", () => {
  it("adds up: surface, depth, upright, distance, port and filter are the whole, within what the order of filters changes", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...TYPES),
        fc.integer({ min: 15, max: 85 }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.constantFrom(undefined, "red" as const, "magenta" as const),
        (type, sun, depth, filter_kind) => {
          const scene = {
            ...daylightScene(type, sun, depth),
            ...(filter_kind ? { filter_kind, filter_density: 0.6 } : {}),
          };
          const d = at(scene);
          const parts = [
            d.surface_loss_stops,
            d.depth_loss_stops,
            d.upright_loss_stops,
            d.distance_loss_stops,
            d.port_loss_stops,
            d.lens_filter_loss_stops,
          ];
          const sum = parts.reduce((s, e) => s + (e?.likely ?? Number.NaN), 0);
          expect(sum).toBeCloseTo(d.total_loss_stops?.likely ?? Number.NaN, 9);
          // A subject that faces a low sun, or is lit from all around in turbid water, may get more than a level surface.
          for (const e of parts) if (e !== d.upright_loss_stops) expect(e?.likely).toBeGreaterThanOrEqual(0);
        },
      ),
      { seed: 1, numRuns: 25 },
    );
  });

  it("asks for the exposure that an incident meter at the subject would, less what the way to the sensor takes (ISO 2720)", () => {
    const d = at(REEF);
    const metered = ev100FromDome(d.subject_illuminance_lx.likely);
    expect(d.exposure_value_ev100.likely).toBeCloseTo(
      metered - d.distance_loss_stops.likely - d.port_loss_stops.likely - d.lens_filter_loss_stops.likely,
      9,
    );
    // EV = log2(N^2 / t) - log2(S / 100)
    expect(Math.log2(d.f_number ** 2 / d.shutter_s) - Math.log2(d.iso / 100)).toBeCloseTo(
      meteredOnSubject(d),
      9,
    );
  });

  it("haze over the subject adds to what the camera meters on it: more the farther, up to open water alone; none by night", () => {
    const { haze_gain_stops: none } = at(NIGHT_WRECK);
    expect(none).toBeUndefined();
    const from = (subject_distance_m: number) => at({ ...REEF, subject_distance_m });
    const [near, middle, far, farther] = [0.1, 2, 60, 90].map(from);
    expect(near.haze_gain_stops?.likely).toBeLessThan(0.03);
    expect(middle.haze_gain_stops?.likely).toBeGreaterThan(near.haze_gain_stops?.likely ?? Number.NaN);
    // Nothing of the subject is left: twice as far, the camera meters the same water.
    expect(meteredOnSubject(farther)).toBeCloseTo(meteredOnSubject(far), 2);
    expect(farther.exposure_value_ev100.likely).toBeLessThan(far.exposure_value_ev100.likely - 1);
  });

  it("the port takes what leaving the water takes (0.543, Voss & Flora 2017) and a little for the window, at any depth and by night", () => {
    const window_stops = -Math.log2(0.978);
    for (const scene of [REEF, { ...REEF, min_depth_m: 30, max_depth_m: 30 }, NIGHT_WRECK]) {
      const { likely, low, high } = at(scene).port_loss_stops;
      expect(likely).toBeCloseTo(-Math.log2(0.543) + window_stops, 1);
      expect([low, high]).toEqual([likely, likely]);
    }
  });

  it("a neutral-density filter of density 0.9 costs 3 stops and its glass 0.1 (ISO 5-2: density is log10, so 3.3219 stops each; leakage of 0.003, an assumption, gives a little back)", () => {
    const d = at({ ...REEF, filter_kind: "neutral", filter_density: 0.9 });
    expect(d.lens_filter_loss_stops.likely).toBeCloseTo(densityToStops(0.9 + 0.035), 1);
    expect(d.lens_filter_loss_stops.likely).toBeLessThan(densityToStops(0.935));
  });

  it("a measured neutral curve takes what it measures, with no doubt about its shape", () => {
    const flat = [400, 700].map((wavelength_nm) => ({ wavelength_nm, transmittance: 0.25 }));
    const d = at({ ...REEF, filter_transmittance: flat });
    expect(d.lens_filter_loss_stops.likely).toBeCloseTo(2, 12);
    expect(d.lens_filter_loss_stops.high - d.lens_filter_loss_stops.low).toBeCloseTo(0, 12);
  });

  it("a stronger filter never adds light, whatever its kind, in any water (law)", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...TYPES),
        fc.constantFrom("red" as const, "magenta" as const, "neutral" as const, "blue" as const),
        fc.double({ min: 0.05, max: 2.5, noNaN: true }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        (type, filter_kind, weak, more, depth) => {
          const scene = daylightScene(type, 45, depth);
          const [bare, light, dense] = [
            {},
            { filter_kind, filter_density: weak },
            { filter_kind, filter_density: weak + more },
          ].map((f) => at({ ...scene, ...f }));
          expect(light.exposure_value_ev100.likely).toBeLessThan(bare.exposure_value_ev100.likely);
          expect(dense.exposure_value_ev100.likely).toBeLessThan(light.exposure_value_ev100.likely);
          expect(dense.lens_filter_loss_stops.likely).toBeGreaterThan(light.lens_filter_loss_stops.likely);
        },
      ),
      { seed: 2, numRuns: 25 },
    );
  });

  it("falls with depth, with distance and with cloud; lamps add to it", () => {
    const ev = (change: Partial<Scene>) => at({ ...REEF, ...change }).exposure_value_ev100.likely;
    expect(ev({ min_depth_m: 12, max_depth_m: 12 })).toBeLessThan(ev({}));
    expect(ev({ subject_distance_m: 3 })).toBeLessThan(ev({}));
    expect(ev({ cloud_oktas: 7 })).toBeLessThan(ev({}));
    expect(ev({ lamps: [TWO_LAMPS] })).toBeGreaterThan(ev({}));
    // Eight oktas leave a quarter of the light (Kasten & Czeplak 1980) and none of the direct beam.
    const below = (oktas: number) =>
      at({ ...REEF, cloud_oktas: oktas, subject_facing: "up" }).subject_illuminance_lx.likely;
    expect(Math.log2(below(0) / below(8))).toBeGreaterThan(1.8);
    expect(Math.log2(below(0) / below(8))).toBeLessThan(2.6);
  });

  it("the denser the filter, the more light it costs, paid in aperture, then ISO (common practice, no published source)", () => {
    const green = daylightScene("3C", 40, 12);
    const settings = [0.3, 0.9, 1.5].map((filter_density) =>
      at({ ...green, filter_kind: "magenta", filter_density }),
    );
    for (let i = 1; i < settings.length; i++) {
      const paid = (d: ExposureAtDepth) => d.iso / d.f_number ** 2;
      expect(paid(settings[i])).toBeGreaterThan(paid(settings[i - 1]));
    }
  });
});

describe("what is told beside the budget", () => {
  const shares = (scene: Scene) => new Map(exposureLoss(scene).uncertainty.map((u) => [u.code, u.share]));

  it("is the doubt of the exposure at the deep end: that of a range is that of its deepest depth alone", () => {
    // A subject that faces up: which way it faces is doubted as in the middle of a range.
    const green = (from_m: number, to_m: number) =>
      shares({ ...daylightScene("3C", 50, from_m, to_m), subject_facing: "up" });
    const [range, deep, shallow] = [green(1, 12), green(12, 12), green(1, 1)];
    for (const [cause, share] of deep) expect(range.get(cause)).toBeCloseTo(share, 9);
    // How bright the day is moves each depth alike; how much the water takes moves the deep more.
    expect(deep.get("water_type_resolution")).toBeGreaterThan(
      (shallow.get("water_type_resolution") ?? 0) + 0.2,
    );
    expect(range.get("daylight_level")).toBeGreaterThan(0);
  });

  it("is how much another filter of the same name would take, where a nominal one is mounted", () => {
    const red = { ...REEF, filter_kind: "red" as const, filter_density: 0.9 };
    expect(shares(red).has("filter_edge")).toBe(true);
    expect(shares(REEF).has("filter_edge")).toBe(false);
    const { low, likely, high } = at(red).lens_filter_loss_stops;
    expect(low).toBeLessThan(likely);
    expect(high).toBeGreaterThan(likely);
  });

  it("is why, what it rests on, and how much contrast is left: all of it without a way through water", () => {
    const { reasons, sources } = exposureLoss(REEF);
    expect(reasons.map(({ code }) => code)).toContain("exposure_fits");
    expect(sources).toEqual(expect.arrayContaining(["jerlov_1976", "iso_2720", "port_radiance"]));
    expect(at({ ...REEF, subject_distance_m: 1e-6 }).contrast_left_percent.likely).toBeCloseTo(100, 3);
    const { low, likely, high } = at(REEF).contrast_left_percent;
    expect(low).toBeLessThan(likely);
    expect(high).toBeGreaterThan(likely);
    expect(high).toBeLessThan(100);
  });
});

describe("what does not fit", () => {
  it("too bright: a smaller aperture, neutral density or a shorter shutter, never ISO, and each of them cures it", () => {
    const d = at(BRIGHT_REEF);
    expect(d.verdict).toBe("too_bright");
    const excess = d.excess_stops?.likely ?? 0;
    expect(excess).toBeGreaterThan(1);
    expect(d.ways_to_pay.map((w) => w.way)).not.toContain("iso");
    expect(d.neutral_density_needed).toBeCloseTo(excess * Math.log10(2), 10);
    expect(at({ ...BRIGHT_REEF, f_number: d.f_number_needed ?? 0 }).excess_stops?.likely ?? 0).toBeLessThan(
      1e-9,
    );
    const nd = { filter_kind: "neutral" as const, filter_density: d.neutral_density_needed ?? 0 };
    expect(at({ ...BRIGHT_REEF, ...nd }).excess_stops?.likely ?? 0).toBeLessThan(0.05);
    expect(
      at({ ...BRIGHT_REEF, shutter_s: (1 / 50) * 2 ** -excess * 1.0000001 }).excess_stops?.likely ?? 0,
    ).toBeLessThan(1e-6);
  });

  it("too dark: what is missing is named, more of it the deeper, and the ways out that are enough are enough", () => {
    const dark: Scene = { ...daylightScene("5C", 15, 12), max_iso: 200 };
    const d = at(dark);
    expect(d.verdict).toBe("too_dark");
    const missing = d.shortfall_stops?.likely ?? 0;
    expect(missing).toBeGreaterThan(1);
    expect(at({ ...dark, min_depth_m: 18, max_depth_m: 18 }).shortfall_stops?.likely).toBeGreaterThan(
      missing,
    );
    const way = (kind: string) => d.ways_to_pay.find((w) => w.way === kind && w.enough);
    const depth = way("shallower")?.depth_m ?? 0;
    expect(at({ ...dark, min_depth_m: depth, max_depth_m: depth }).verdict).toBe("fits");
    const shutter_s = way("shutter")?.shutter_s ?? 0;
    expect(at({ ...dark, shutter_s: shutter_s * 1.000001 }).verdict).toBe("fits");
    const sun = way("higher_sun")?.sun_elevation_deg ?? 0;
    expect(at({ ...dark, sun_elevation_deg: sun }).verdict).toBe("fits");
    const flux_lm = (way("lamp")?.lamp_flux_lm ?? 0) * 1.001;
    // A lamp of that flux, with the lamp's own losses, lifts the subject to where it fits, up to what its other colour changes.
    const lit = at({ ...dark, lamps: [{ ...TWO_LAMPS, count: 1, flux_lm }] });
    expect(lit.shortfall_stops?.likely ?? 0).toBeLessThan(0.2);
  });

  it("with a filter on: taking it off is among the ways, and gains what the filter takes, of the subject's light and of its haze", () => {
    const dark: Scene = {
      ...daylightScene("5C", 15, 12),
      max_iso: 200,
      filter_kind: "magenta",
      filter_density: 0.9,
    };
    const d = at(dark);
    const off = d.ways_to_pay.find((w) => w.way === "filter_off");
    // Haze has nearly the subject's colour.
    expect(off?.gains_stops).toBeCloseTo(d.lens_filter_loss_stops.likely, 1);
    const bare = at({ ...dark, filter_kind: "neutral", filter_density: 0 });
    expect(off?.gains_stops).toBeGreaterThan(0);
    expect(meteredOnSubject(bare)).toBeGreaterThan(meteredOnSubject(d) + 1);
  });

  it("is said at each depth of a range, deepest darkest", () => {
    const { depths } = exposureLoss({ ...OUTER_REEF_MORNING, max_depth_m: 40 });
    expect(depths.length).toBe(7);
    for (let i = 1; i < depths.length; i++) {
      expect(depths[i].exposure_value_ev100.likely).toBeLessThan(depths[i - 1].exposure_value_ev100.likely);
    }
  });
});

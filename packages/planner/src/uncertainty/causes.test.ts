import { atNight, daylightScene, NIGHT_WRECK, REEF_WITH_LAMPS, withKd } from "@sunfathom/fixtures/scenes";
import { peakIntensity_cd } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import type { Scene } from "../scene/scene.js";
import { causesOf, FILTER_CAUSES, LIT_HAZE_CAUSES, nuisanceAt } from "./causes.js";
import { Z90 } from "./normal.js";
import { NOMINAL } from "./nuisance.js";

const REEF = daylightScene("IB", 45, 8, 12);
const idsOf = (scene: Scene) => causesOf(conditionsOf(scene)).map(({ code }) => code);

/** The state of the world at z standard deviations of one cause. */
function at(scene: Scene, id: string, z: number) {
  const cause = causesOf(conditionsOf(scene)).find((c) => c.code === id);
  if (!cause) throw new Error(`no ${id}`);
  return nuisanceAt(cause, z);
}
const daylightStops = (cloud_oktas: number) =>
  Math.log2(at({ ...REEF, cloud_oktas }, "daylight_level", 1).daylightScale);

describe("the causes that bear on a scene", () => {
  it("leave out daylight's at night, and lamps' by day without any", () => {
    expect(idsOf(REEF)).toEqual(
      expect.arrayContaining([
        "path_scattering",
        "water_scattering",
        "sensor",
        "daylight_level",
        "upright_share",
        "light_field",
        "reference_sun",
      ]),
    );
    expect(idsOf(REEF)).not.toContain("lamp_beam");
    expect(idsOf(REEF_WITH_LAMPS)).toEqual(
      expect.arrayContaining(["daylight_level", "upright_share", "lamp_beam"]),
    );
    for (const scene of [NIGHT_WRECK, atNight(REEF)])
      for (const id of ["daylight_level", "upright_share", "light_field", "reference_sun"])
        expect(idsOf(scene)).not.toContain(id);
    expect(idsOf(NIGHT_WRECK)).toContain("lamp_beam");
  });

  it("move one thing each, and nothing at its nominal state", () => {
    const all = [...causesOf(conditionsOf(REEF_WITH_LAMPS)), ...FILTER_CAUSES, ...LIT_HAZE_CAUSES];
    expect(new Set(all.map(({ code }) => code)).size).toBe(all.length);
    for (const cause of all) {
      expect(Object.keys(cause.shift(1))).toHaveLength(1);
      if (!cause.code.startsWith("filter_")) expect(nuisanceAt(cause, 0)).toEqual(NOMINAL);
      expect(nuisanceAt(cause, 1)).not.toEqual(NOMINAL);
    }
  });

  it("are as many as the water's description leaves doubts: a measured one leaves fewer than a class of waters", () => {
    const spread = (scene: Scene) => {
      const { remainder_sigmas } = conditionsOf(scene).water;
      for (const { cause, sigma_ln } of remainder_sigmas) {
        expect(at(scene, cause, 1).kdRemainderScale).toBeCloseTo(Math.exp(sigma_ln), 12);
        expect(at(scene, cause, -2).kdRemainderScale).toBeCloseTo(Math.exp(-2 * sigma_ln), 12);
      }
      return Math.hypot(...remainder_sigmas.map(({ sigma_ln }) => sigma_ln));
    };
    const samples = [450, 550, 650].map((wavelength_nm) => ({ wavelength_nm, kd_per_m: 0.3 }));
    expect(spread(withKd(REEF, samples))).toBeLessThan(spread(REEF));
  });
});

describe("how far a cause reaches", () => {
  it("daylight: 0.15 stops under a clear sky, 0.4 more in quadrature from half a sky of cloud on (Kasten & Czeplak 1980: some 30 %)", () => {
    expect(daylightStops(0)).toBeCloseTo(0.15, 12);
    expect(daylightStops(2)).toBeCloseTo(Math.hypot(0.15, 0.2), 12);
    expect(daylightStops(4)).toBeCloseTo(Math.hypot(0.15, 0.4), 12);
    expect(daylightStops(8)).toBeCloseTo(daylightStops(4), 12);
    expect(2 ** daylightStops(8)).toBeGreaterThan(1.3);
  });

  it("scattering on a short path: half of it counts as lost, up to all of it and no more", () => {
    expect(at(REEF, "path_scattering", 1).scatterLost).toBeCloseTo(0.5 * 2 ** 0.8, 12);
    expect(at(REEF, "path_scattering", -1).scatterLost).toBeCloseTo(0.5 / 2 ** 0.8, 12);
    expect(at(REEF, "path_scattering", 4).scatterLost).toBe(1);
  });

  it("scattering of particles: as unsure as the description, and surer where visibility was seen", () => {
    const { water_type: _, ...bare } = REEF;
    const ln = (scene: Scene) => Math.log(at(scene, "water_scattering", 1).scatteringScale);
    const seen: Scene = { ...bare, visibility_m: 15, water_hue: "blue" };
    const { beam_attenuation_530 } = conditionsOf(seen).water;
    expect(ln(seen)).toBeCloseTo(beam_attenuation_530?.sigma_ln ?? Number.NaN, 12);
    expect(ln(seen)).toBeLessThan(ln(REEF));
    const told = [REEF, seen].map(
      (scene) => causesOf(conditionsOf(scene)).find(({ code }) => code === "water_scattering")?.parameters,
    );
    expect(told).toEqual([{ known_by: "attenuation" }, { known_by: "sight" }]);
  });

  it("floors: none over deep water, and one of a kind twice as pale as another of it within two deviations (sand: from memory)", () => {
    const sandy: Scene = { ...REEF, bottom: "sand", bottom_depth_m: 15 };
    expect(idsOf(REEF)).not.toContain("sea_floor");
    expect(at(sandy, "sea_floor", 1).floorScale).toBeGreaterThan(1.4);
    expect(at(sandy, "sea_floor", 1).floorScale).toBeLessThan(2);
  });

  // What the model takes, as written beside it: a change here is a change of every bound that rests on it.
  it.each([
    ["lamp_beam", 1, { lampIntensityScale: 1 / Math.LN2 }],
    ["lamp_beam", -1, { lampIntensityScale: Math.LN2 }],
    ["lamp_aim", 1.5, { lampAim: 1.5 }],
    ["lamp_offset", 1, { lampOffsetScale: 2 ** 0.6 }],
    ["sensor", -1.5, { crosstalkSd: -1.5 }],
    ["upright_share", Z90, { facing: Z90 }],
    ["light_field", -1, { uprightScale: Math.exp(-0.07) }],
    ["reference_sun", 1, { referenceMu0: 0.93 }],
    ["filter_edge", -1, { filterShape: { shift_nm: -8 } }],
    ["filter_width", 2, { filterShape: { widthScale: Math.exp(0.5) } }],
    ["full_well", 1, { fullWellScale: 2 ** 0.8 }],
  ])("%s at %d standard deviations", (id, z, state) => {
    const all = [...causesOf(conditionsOf(REEF_WITH_LAMPS)), ...FILTER_CAUSES, ...LIT_HAZE_CAUSES];
    const cause = all.find((c) => c.code === id);
    expect(cause?.shift(z)).toEqual(state);
  });

  it("a beam that is even up to its edge is one standard deviation brighter: flux over its cone, of a narrow one (solid angle)", () => {
    const [h, flux] = [(10 * Math.PI) / 180, 1000];
    const even_cd = flux / (2 * Math.PI * (1 - Math.cos(h)));
    const bright = peakIntensity_cd(flux, 20) * at(REEF_WITH_LAMPS, "lamp_beam", 1).lampIntensityScale;
    expect(bright / even_cd).toBeCloseTo(1, 1);
  });
});

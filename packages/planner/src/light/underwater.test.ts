import { atNight, daylightScene, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { CLEAR, GRID_SIZE, pathAttenuation, type Spectrum } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { conditionsOf } from "./conditions.js";
import { aimAt } from "./lamp-aim.js";
import { beamShareAt } from "./lamps.js";
import { CLEAR_LAMPS, downwellingAt, lampLightAt, PORT, towardsCamera, underwater } from "./underwater.js";

const reef = daylightScene("IB", 45, 10);
const conditions = conditionsOf(reef);
const worldOf = (change: Partial<Nuisance> = {}, scene?: Scene) =>
  underwater(scene ? conditionsOf(scene) : conditions, { ...NOMINAL, ...change });
const nominal = worldOf();
const expectTimes = (light: Spectrum, factor: (i: number) => number, base: Spectrum) => {
  light.forEach((e, i) => {
    expect(e).toBeCloseTo(factor(i) * base[i], 12);
  });
};

describe("daylight under water", () => {
  it("falls exponentially with depth by its diffuse attenuation, from just below the surface (definition of Kd)", () => {
    const surface = nominal.daylight?.below.downwelling ?? CLEAR;
    expect(downwellingAt(nominal, 0)).toEqual(surface);
    expectTimes(downwellingAt(nominal, 7), (i) => Math.exp(-7 * nominal.kd_per_m[i]), surface);
  });

  it("fades by the sun's own path: where hardly anything scatters as one over its cosine (Gordon 1989, from memory), at night as under an even sky", () => {
    const red = (650 - 380) / 5;
    const of = (scene: Scene) => {
      const world = worldOf({ scatteringScale: 1e-6 }, scene);
      return { mu0: world.daylight?.below.mu0 ?? 0.85, kd: world.kd_per_m[red] };
    };
    const [high, low] = [80, 20].map((sun) => of(daylightScene("IB", sun, 10)));
    const night = of({ ...atNight(reef), lamps: [TWO_LAMPS] });
    expect(high.mu0).toBeGreaterThan(low.mu0 + 0.1);
    for (const { mu0, kd } of [low, night]) expect(kd / high.kd).toBeCloseTo(high.mu0 / mu0, 2);
  });

  it("is as bright as the day is taken to be, at every depth", () => {
    expectTimes(downwellingAt(worldOf({ daylightScale: 1.3 }), 7), () => 1.3, downwellingAt(nominal, 7));
  });

  it("is none at night", () => {
    const night = worldOf({}, { ...atNight(reef), lamps: [TWO_LAMPS] });
    const dark = new Float64Array(GRID_SIZE);
    expect(night.daylight).toBeUndefined();
    expect(downwellingAt(night, 7)).toEqual(dark);
  });
});

describe("the water in doubt", () => {
  it("was described under a sun of its own: under a lower one it fades less under this one (Kirk 1984)", () => {
    const [low, high] = [0.86, 0.94].map((referenceMu0) => worldOf({ referenceMu0 }).kd_per_m[34]);
    expect(low).toBeLessThan(nominal.kd_per_m[34]);
    expect(high).toBeGreaterThan(nominal.kd_per_m[34]);
  });

  it("attenuates more in blue where there is more in it, and in red, where IB is as pure water, no less", () => {
    const [clear, murky] = [0.5, 1.5].map((kdRemainderScale) => worldOf({ kdRemainderScale }).kd_per_m);
    const blue = (450 - 380) / 5;
    expect(murky[blue]).toBeGreaterThan(nominal.kd_per_m[blue]);
    expect(nominal.kd_per_m[blue]).toBeGreaterThan(clear[blue]);
    murky.forEach((kd, i) => {
      expect(kd).toBeGreaterThanOrEqual(clear[i]);
    });
  });

  it("loses of a short path what it absorbs and the share of scattering that counts as lost", () => {
    for (const scatterLost of [0, 0.5, 1]) {
      const world = worldOf({ scatterLost });
      expect(world.path_per_m).toEqual(pathAttenuation(world.water, scatterLost));
    }
    const { absorption_per_m, scattering_per_m } = nominal.water;
    worldOf({ scatterLost: 0 }).path_per_m.forEach((c, i) => {
      expect(c).toBeCloseTo(absorption_per_m[i], 12);
    });
    worldOf({ scatterLost: 1 }).path_per_m.forEach((c, i) => {
      expect(c).toBeCloseTo(absorption_per_m[i] + scattering_per_m[i], 12);
    });
  });

  it("scatters as much more as it is taken to", () => {
    const more = worldOf({ scatteringScale: 2 }).water.scattering_per_m;
    more.forEach((b, i) => {
      expect(b).toBeGreaterThan(nominal.water.scattering_per_m[i]);
    });
  });

  it("lets through towards the camera exp(-c r) (Beer and Lambert)", () => {
    const far = worldOf({}, { ...reef, subject_distance_m: 2.5 });
    expectTimes(towardsCamera(far), (i) => Math.exp(-2.5 * far.path_per_m[i]), CLEAR);
  });
});

describe("lamps under water", () => {
  const lit = worldOf(
    {},
    { ...REEF_WITH_LAMPS, lamps: [{ ...TWO_LAMPS, filter_kind: "blue", filter_density: 0.6 }] },
  );

  it("light through the water's path, as bright as their beams are taken to be, with or without their filters", () => {
    const bare = worldOf({}, REEF_WITH_LAMPS);
    expectTimes(lampLightAt(lit, CLEAR_LAMPS), () => 1, lampLightAt(bare));
    expect(lampLightAt(lit)[50]).toBeLessThan(lampLightAt(bare)[50]);
    expectTimes(
      lampLightAt(worldOf({ lampIntensityScale: 0.7 }, REEF_WITH_LAMPS)),
      () => 0.7,
      lampLightAt(bare),
    );
    // The subject looks smaller from farther, and so lies more in the middle of the beam.
    const farther = lampLightAt(bare, { distance_m: 1.6 });
    const aim = aimAt(REEF_WITH_LAMPS, NOMINAL);
    const more = beamShareAt(100, 1.6, aim) / beamShareAt(100, 0.8, aim);
    expect(more).toBeGreaterThan(1);
    expectTimes(farther, (i) => 0.25 * more * Math.exp(-0.8 * bare.path_per_m[i]), lampLightAt(bare));
  });

  it("are none where none is switched on", () => {
    expect(lampLightAt(nominal)).toEqual(new Float64Array(GRID_SIZE));
  });
});

it("the port lets through about half of the radiance (0.543 without a window: Voss & Flora 2017)", () => {
  expect(PORT).toBeGreaterThan(0.5);
  expect(PORT).toBeLessThan(0.543);
});

import { describe, expect, it } from "vitest";
import { refractedAngle_deg } from "../surface/snell-fresnel.js";
import { kirkKd } from "../water/kirk-1984.js";
import { type Coefficients, type FieldGeometry, lightField, openWaterRadiance } from "./light-field.js";
import { type Layer, type Sea, TILTS_DEG, traceSea } from "./radiance.test-support.js";
import { cardLight, domeLight } from "./subject-light.js";

const PHOTONS = 12_000;
const TO_ABSORPTION_DEPTH = 2.5;
/** Below it the tracing is noise. */
const LEAST_LIGHT = 0.05;
const RADIAN = Math.PI / 180;

// Other seas and seeds than those that the constants were fitted to.
const seas: Sea[] = [
  [0.2, 0.1],
  [0.6, 0.02],
  [1.5, 0.2],
  [4, 0.05],
  [7, 0.1],
].flatMap(([scatteringOverAbsorption, molecularOverAbsorption]) =>
  [
    [10, 0.85],
    [35, 0.8],
    [60, 0.7],
    [40, 0],
  ].map(([sunZenith_deg, directShare]) => ({
    scatteringOverAbsorption,
    molecularOverAbsorption,
    sunZenith_deg,
    directShare,
  })),
);

function modelOf(sea: Sea, depth_m: number): { geometry: FieldGeometry; coefficients: Coefficients } {
  const sunAngleInWater_deg = refractedAngle_deg(sea.sunZenith_deg);
  const mu0 = 1 / (sea.directShare / Math.cos(sunAngleInWater_deg * RADIAN) + (1 - sea.directShare) / 0.84);
  const molecules_per_m = sea.molecularOverAbsorption ?? 0;
  return {
    geometry: { sunAngleInWater_deg, directShare: sea.directShare, depth_m },
    coefficients: {
      absorption_per_m: 1,
      particles_per_m: sea.scatteringOverAbsorption,
      molecules_per_m,
      kd_per_m: kirkKd(1, sea.scatteringOverAbsorption + molecules_per_m, mu0),
    },
  };
}
const points = seas.flatMap((sea, n) =>
  traceSea(sea, TO_ABSORPTION_DEPTH, PHOTONS, 7000 + n)
    .filter(({ downwelling }) => downwelling > LEAST_LIGHT)
    .map((layer) => {
      const { geometry, coefficients } = modelOf(sea, layer.absorptionDepth);
      const sunTangent = Math.tan(geometry.sunAngleInWater_deg * RADIAN);
      return { sea, layer, coefficients, sunTangent, field: lightField(geometry, coefficients) };
    }),
);
const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);
const scalarOf = ({ upwelling, meanCosine }: Layer): number => (1 - upwelling) / meanCosine;

/** Exact from what was traced: half of scalar and net irradiance along the axis, Ed = 1. */
const tracedDome = (layer: Layer, cosToSun: number): number =>
  (scalarOf(layer) + layer.netTowards * cosToSun) / 2;

describe("light on a solid subject, against photon tracing in seas that fitted nothing", () => {
  it.each([
    { name: "sun behind the camera", cosToSun: 1 },
    { name: "sun beside", cosToSun: 0 },
    { name: "sun in the picture", cosToSun: -1 },
  ])("$name: a dome receives what was traced within 10 % root mean square", ({ cosToSun }) => {
    const off = points.map(({ layer, field }) =>
      Math.log(domeLight(field, { cosToSun, upSine: 0 }) / tracedDome(layer, cosToSun)),
    );
    expect(rms(off)).toBeLessThan(0.1);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.35);
  });

  it("a camera that looks straight down meters half of scalar and net vertical irradiance", () => {
    for (const { field } of points) {
      expect(domeLight(field, { upSine: 1 })).toBeCloseTo((field.scalar + 1 - field.upwelling) / 2, 12);
    }
  });

  it("receives an even field as a sphere would: a quarter of scalar irradiance on each plane, half on a dome", () => {
    // An even field of radiance 1/pi: Ed = Eu = 1, E0 = 4, no net irradiance (integral of the cardioid is half that of the sphere).
    const even = { scalar: 4, beam: 0, net: 0, upwelling: 1, upright: 1 };
    for (const upSine of [-1, -0.4, 0, 0.7, 1]) {
      expect(domeLight(even, { upSine })).toBeCloseTo(2, 12);
      expect(cardLight(even, 0, { upSine })).toBeCloseTo(1, 12);
    }
  });

  it("gets an even floor as geometry says: half on an upright card, all on a dome, on a card that looks down all", () => {
    const dark = { scalar: 1, beam: 1, net: 0, upwelling: 0, upright: 0 };
    const floor = { upwelling: 0.4, gain: 1 };
    const more = (of: (upwelling: number) => number): number => of(floor.upwelling) - of(0);
    const card = (upSine: number) => (upwelling: number) =>
      cardLight(dark, 0, { cosToSun: 0, upSine }, { upwelling, gain: 1 });
    expect(more(card(0))).toBeCloseTo(0.2, 12);
    expect(more(card(-1))).toBeCloseTo(0.4, 12);
    expect(more((upwelling) => domeLight(dark, { upSine: 0 }, { upwelling, gain: 1 }))).toBeCloseTo(0.4, 12);
  });
});

describe("light on a card, against photon tracing", () => {
  it.each([
    { name: "any direction", seen: ({ upright }: Layer) => upright },
    { name: "towards the sun", cosToSun: 1, seen: ({ uprightAt }: Layer) => uprightAt[0] },
    { name: "half towards the sun", cosToSun: Math.SQRT1_2, seen: ({ uprightAt }: Layer) => uprightAt[1] },
  ])("$name: within 8 % root mean square", ({ seen, name: _, ...direction }) => {
    const off = points.map(({ layer, field, sunTangent }) =>
      Math.log(cardLight(field, sunTangent, { upSine: 0, ...direction }) / seen(layer)),
    );
    expect(rms(off)).toBeLessThan(0.08);
  });

  it("across the sun, where it gets little: within 12 % of the mean over directions", () => {
    const off = points.map(({ layer, field, sunTangent }) => {
      const ours = cardLight(field, sunTangent, { cosToSun: 0, upSine: 0 });
      return (ours - layer.uprightAt[2]) / layer.upright;
    });
    expect(rms(off)).toBeLessThan(0.12);
  });

  it("facing up gets the downwelling light, whatever its direction", () => {
    for (const { field, sunTangent } of points) {
      expect(cardLight(field, sunTangent, { upSine: 1 })).toBeCloseTo(1, 12);
      expect(cardLight(field, sunTangent, { cosToSun: 0.5, upSine: 1 })).toBeCloseTo(1, 12);
    }
  });
});

describe("open water at eye level, against photon tracing", () => {
  it("has the mean over directions with a mean difference below 10 %", () => {
    const off = points.map(({ layer, field, coefficients }) => {
      // Straight towards and away from the sun stand for an eighth of the circle each, the others for a quarter.
      const traced = layer.level.reduce((sum, v, n) => sum + v * (n % 4 === 0 ? 1 : 2), 0) / 8;
      return openWaterRadiance(field, coefficients) / traced - 1;
    });
    // Few photons pass level: the tracing itself scatters by some 10 %.
    expect(rms(off)).toBeLessThan(0.3);
    const mean = off.reduce((sum, v) => sum + v, 0) / off.length;
    expect(Math.abs(mean)).toBeLessThan(0.1);
  });

  it("does not brighten with the subject when the sun is behind the camera", () => {
    for (const { field, coefficients, sea } of points) {
      if (sea.directShare === 0) continue;
      const behind = domeLight(field, { cosToSun: 1, upSine: 0 });
      expect(behind).toBeGreaterThan(domeLight(field, { cosToSun: -1, upSine: 0 }));
      // The camera then looks away from the sun.
      const looking = (cosFromSun: number) => openWaterRadiance(field, coefficients, { cosFromSun });
      expect(looking(-1)).toBeLessThan(looking(1));
    }
  });
});

describe("open water above and below, against photon tracing", () => {
  it.each([-60, -45, -30, -15, 15, 30])(
    "looking %d degrees up, over level: within a third of a stop",
    (tilt_deg) => {
      const off = points
        .filter(({ coefficients }) => coefficients.particles_per_m >= 0.5)
        .map(({ layer, field, coefficients }) => {
          const upSine = Math.sin((tilt_deg * Math.PI) / 180);
          const ours =
            openWaterRadiance(field, coefficients, { upSine }) / openWaterRadiance(field, coefficients);
          const traced = layer.tilted[TILTS_DEG.indexOf(tilt_deg)] / layer.tilted[TILTS_DEG.indexOf(0)];
          return Math.log2(ours / traced);
        });
      expect(off.length).toBeGreaterThan(5);
      const mean = off.reduce((sum, v) => sum + v, 0) / off.length;
      expect(Math.abs(mean)).toBeLessThan(1 / 3);
    },
  );

  it("brightens all the way up, and nowhere more than light that grows along a way without loss", () => {
    for (const { field, coefficients } of points) {
      const at = (upSine: number) => openWaterRadiance(field, coefficients, { upSine });
      const all = [-1, -0.5, 0, 0.25, 0.5].map(at);
      expect(all).toEqual([...all].sort((a, b) => a - b));
      // Through the surface one sees something else: the steepest water stands for it.
      expect(at(1)).toBe(at(0.6));
      expect(Number.isFinite(at(1))).toBe(true);
    }
  });
});

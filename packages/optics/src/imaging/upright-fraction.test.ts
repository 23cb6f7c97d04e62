import { describe, expect, it } from "vitest";
import { refractedAngle_deg } from "../surface/snell-fresnel.js";
import { kirkKd } from "../water/kirk-1984.js";
import { type Layer, type Sea, traceSea } from "./radiance.test-support.js";
import {
  asymptoticUprightFraction,
  asymptoticUprightFractionFast,
  SKY_FRACTION,
} from "./upright-fraction.js";

const PHOTONS = 8000;
const ABSORPTION_DEPTH = 3;

/** Mean cosine of sun and sky below the surface; 0.86 for an even sky (Gordon 1989, from memory). */
const mu0Of = ({ sunZenith_deg, directShare }: Sea): number =>
  1 /
  (directShare / Math.cos((refractedAngle_deg(sunZenith_deg) * Math.PI) / 180) + (1 - directShare) / 0.86);

// Absorption is 1 per m, so that metres are absorption depths.
const seas: Sea[] = [0.3, 1, 3, 8].flatMap((scatteringOverAbsorption) =>
  [
    [15, 1],
    [30, 0.8],
    [50, 0.8],
    [70, 0.6],
    [40, 0],
  ].map(([sunZenith_deg, directShare]) => ({ scatteringOverAbsorption, sunZenith_deg, directShare })),
);
const traced = seas.map((sea, n) => ({ sea, layers: traceSea(sea, ABSORPTION_DEPTH, PHOTONS, 100 + n) }));
describe("photon tracing, before it is trusted", () => {
  it("keeps Gershun's law: absorbed light is what the net irradiance loses", () => {
    // Gershun 1939: d(Ed - Eu)/dz = -a E0, exact; checked over the whole depth as ln of the net irradiance.
    const { layers } = traced[5];
    const net = ({ downwelling, upwelling }: Layer): number => downwelling * (1 - upwelling);
    const [top, bottom] = [layers[0], layers[layers.length - 1]];
    const lost = Math.log(net(top) / net(bottom));
    const step = layers[1].absorptionDepth - layers[0].absorptionDepth;
    const absorbed =
      layers.slice(1, -1).reduce((sum, { meanCosine }) => sum + step / meanCosine, 0) +
      (step / 2) * (1 / top.meanCosine + 1 / bottom.meanCosine);
    expect(Math.abs(lost / absorbed - 1)).toBeLessThan(0.01);
  });

  it("attenuates as Kirk 1984 says, within 10 % down to a tenth of the surface light", () => {
    // Kirk 1984, Limnol. Oceanogr. 29, 350: mean Kd of the euphotic zone, from his own photon
    // tracing with another phase function (San Diego harbour), which leaves some per cent at b/a 8.
    for (const { sea, layers } of traced) {
      const kirk = kirkKd(1, sea.scatteringOverAbsorption, mu0Of(sea));
      const last = layers.findIndex(({ downwelling }) => downwelling < 0.1 * layers[0].downwelling);
      const [top, bottom] = [layers[0], layers[last]];
      const kd =
        Math.log(top.downwelling / bottom.downwelling) / (bottom.absorptionDepth - top.absorptionDepth);
      expect(Math.abs(kd / kirk - 1), JSON.stringify(sea)).toBeLessThan(0.1);
    }
  });

  it("is bounded by the mean cosine: upright <= (Ed - Eu) sqrt(1 - mu^2) / (pi mu), by Jensen's inequality", () => {
    for (const { layers } of traced) {
      for (const { upright, meanCosine: mu, upwelling } of layers) {
        expect(upright).toBeLessThanOrEqual(
          ((1 - upwelling) * Math.sqrt(1 - mu * mu)) / (Math.PI * mu) + 1e-9,
        );
      }
    }
  });

  it("gives a subject under an even sky, in hardly scattering water near the surface, the exact 0.198", () => {
    const [top] = traceSea(
      { scatteringOverAbsorption: 0.02, sunZenith_deg: 0, directShare: 0 },
      0.05,
      20000,
      5,
    );
    expect(top.upright).toBeCloseTo(SKY_FRACTION, 2);
  });
});

describe("the asymptotic field", () => {
  it("is even in all directions for a mean cosine near 0, where an upright plane gets what a level one does", () => {
    expect(asymptoticUprightFraction(0.05)).toBeCloseTo(1, 0);
    expect(asymptoticUprightFraction(0.05)).toBeLessThan(1);
  });

  // The field exp(k cos) itself, over the sphere by the midpoint rule; its mean cosine is coth k - 1/k (Langevin's function).
  it.each([0.2, 1, 2.5, 6, 15])(
    "is what integration over all directions gives, for a concentration of %d",
    (k) => {
      const mean = 1 / Math.tanh(k) - 1 / k;
      const steps = 4000;
      let upright = 0;
      let downwelling = 0;
      for (let n = 0; n < steps; n++) {
        const theta = ((n + 0.5) / steps) * Math.PI;
        const radiance = Math.exp(k * (Math.cos(theta) - 1)) * Math.sin(theta);
        // Around the vertical, the integral of max(0, cos) is 2.
        upright += 2 * radiance * Math.sin(theta);
        downwelling += 2 * Math.PI * radiance * Math.max(0, Math.cos(theta));
      }
      expect(asymptoticUprightFraction(mean)).toBeCloseTo(upright / downwelling, 5);
    },
  );

  it("comes from its table within 1e-8 of the formula, and is held where the formula is", () => {
    for (let mean = 0.05; mean <= 0.95; mean += 0.000_37) {
      expect(
        Math.abs(asymptoticUprightFractionFast(mean) / asymptoticUprightFraction(mean) - 1),
      ).toBeLessThan(1e-8);
    }
    expect(asymptoticUprightFractionFast(-1)).toBeCloseTo(asymptoticUprightFraction(0.05), 8);
    expect(asymptoticUprightFractionFast(1.2)).toBeCloseTo(asymptoticUprightFraction(0.95), 8);
  });

  it("stays under the bound that its mean cosine sets", () => {
    for (const mu of [0.5, 0.6, 0.7, 0.8, 0.9]) {
      expect(asymptoticUprightFraction(mu)).toBeLessThan(Math.sqrt(1 - mu * mu) / (Math.PI * mu));
    }
  });
});

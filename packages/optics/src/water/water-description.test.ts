import { describe, expect, it } from "vitest";
import { jerlovKd } from "./jerlov-1976.js";
import { combinedSigma, scatteringScaleForBeam } from "./water-description.js";
import { describeByType } from "./water-from-name.js";
import { waterFromKd } from "./water-optics.js";

const AT_530_NM = (530 - 380) / 5;

it("independent spreads combine as the root of their squares: 3, 4 and 12 to 13 (propagation of errors)", () => {
  const sigmas = [3, 4, 12].map((sigma_ln) => ({ cause: "card_noise" as const, sigma_ln }));
  expect(combinedSigma(sigmas)).toBe(13);
  expect(combinedSigma([])).toBe(0);
});

describe("scattering for a seen beam attenuation", () => {
  const kd = jerlovKd("II");
  const beamAt = (scatteringScale: number) =>
    waterFromKd(kd, { scatteringScale }).beam_attenuation_per_m[AT_530_NM];

  it.each([0.15, 0.4, 3])("brings the beam at 530 nm to %d per m", (beam_per_m) => {
    const scale = scatteringScaleForBeam(describeByType("II"), beam_per_m) ?? Number.NaN;
    expect(beamAt(scale) / beam_per_m).toBeCloseTo(1, 9);
  });

  it("is what made the beam", () => {
    for (const scale of [0.3, 1, 20])
      expect(scatteringScaleForBeam(describeByType("II"), beamAt(scale))).toBeCloseTo(scale, 6);
  });

  it("is none below what the diffuse light demands, nor above what any particles make, nor for no number", () => {
    expect(scatteringScaleForBeam(describeByType("5C"), 0.1)).toBeUndefined();
    expect(scatteringScaleForBeam(describeByType("II"), beamAt(1e-3) * 0.999)).toBeUndefined();
    expect(scatteringScaleForBeam(describeByType("II"), beamAt(1e3) * 1.001)).toBeUndefined();
    expect(scatteringScaleForBeam(describeByType("II"), beamAt(1e3) * 0.999)).toBeDefined();
    expect(scatteringScaleForBeam(describeByType("II"), Number.NaN)).toBeUndefined();
  });
});

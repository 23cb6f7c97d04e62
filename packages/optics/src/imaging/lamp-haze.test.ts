import { describe, expect, it } from "vitest";
import { GRID_SIZE } from "../spectrum/grid.js";
import { backscattering, lampHazeRadiance } from "./lamp-haze.js";

const flat = (value: number) => new Float64Array(GRID_SIZE).fill(value);
const geometry = { subjectDistance_m: 1, lampDistance_m: 1, offset_m: 0.3, beamAngle_deg: 180 };
const haze = (over: Partial<typeof geometry> = {}, bb = 0.003, c = 0.2) =>
  lampHazeRadiance(flat(100), flat(bb), flat(c), { ...geometry, ...over })[0];

describe("haze lit by lamps", () => {
  it("equals its closed form without attenuation: I bb / (2 pi o) times the angle that the line of sight spans at the lamp", () => {
    // Integral of dx / (x^2 + o^2), exact; the line of sight runs from the lamp's foot to the subject behind it.
    const offset_m = 0.3;
    const behind = Math.sqrt(1 - offset_m ** 2);
    const foot = 1 - behind;
    const spanned = (Math.atan((1 - foot) / offset_m) + Math.atan(foot / offset_m)) / offset_m;
    expect(haze({}, 0.003, 0)).toBeCloseTo(((100 * 0.003) / (2 * Math.PI)) * spanned, 4);
  });

  // Along the line of sight by Simpson's rule in 2000 steps, angles by the law of cosines instead of a scalar product.
  it.each([
    { subjectDistance_m: 1, lampDistance_m: 1, offset_m: 0.3, beamAngle_deg: 180 },
    { subjectDistance_m: 2, lampDistance_m: 1.5, offset_m: 0.5, beamAngle_deg: 180 },
    { subjectDistance_m: 0.6, lampDistance_m: 0.8, offset_m: 0.2, beamAngle_deg: 180 },
    { subjectDistance_m: 2, lampDistance_m: 0.5, offset_m: 2, beamAngle_deg: 180 },
    { subjectDistance_m: 1.5, lampDistance_m: 1.5, offset_m: 0.4, beamAngle_deg: 70 },
  ])("is what single scattering along the line of sight adds up to, for %o", (lamp) => {
    const { subjectDistance_m: subject_m, lampDistance_m, beamAngle_deg } = lamp;
    const [intensity, bb, c] = [100, 0.003, 0.4];
    const offset_m = Math.min(lamp.offset_m, 0.9 * lampDistance_m);
    const lampAt_m = subject_m - Math.sqrt(lampDistance_m ** 2 - offset_m ** 2);
    const fromPoint = (x_m: number) => {
      const toLamp_m = Math.hypot(x_m - lampAt_m, offset_m);
      const toSubject_m = subject_m - x_m;
      const cosine =
        (toLamp_m ** 2 + lampDistance_m ** 2 - toSubject_m ** 2) / (2 * toLamp_m * lampDistance_m);
      // Half of the middle's intensity at half the beam angle, by a power of the cosine.
      const exponent =
        beamAngle_deg === 180 ? 0 : Math.log(0.5) / Math.log(Math.cos((beamAngle_deg * Math.PI) / 360));
      const towards = cosine <= 0 ? 0 : intensity * cosine ** exponent;
      return ((towards * bb) / (2 * Math.PI * toLamp_m ** 2)) * Math.exp(-c * (toLamp_m + x_m));
    };
    const steps = 2000;
    const h = subject_m / steps;
    let sum = fromPoint(0) + fromPoint(subject_m);
    for (let n = 1; n < steps; n++) sum += (n % 2 === 1 ? 4 : 2) * fromPoint(n * h);
    const exact = (sum * h) / 3;
    const got = lampHazeRadiance(flat(intensity), flat(bb), flat(c), lamp);
    // An even hemisphere ends where the line of sight passes the lamp, between two of the model's 60 steps: one more or less.
    const whole = fromPoint(0) > 0;
    expect(Math.abs(got[0] / exact - 1)).toBeLessThan(whole ? 0.003 : 0.03);
    expect(got).toEqual(flat(got[0]));
  });

  it("falls as the lamp moves away from the line of sight, and with a narrower beam", () => {
    expect(haze({ offset_m: 0.6 })).toBeLessThan(haze({ offset_m: 0.3 }));
    expect(haze({ beamAngle_deg: 40 })).toBeLessThan(haze({ beamAngle_deg: 120 }));
  });

  it("grows with backscattering in proportion and falls with attenuation", () => {
    expect(haze({}, 0.006)).toBeCloseTo(2 * haze({}, 0.003), 12);
    expect(haze({}, 0.003, 1)).toBeLessThan(haze({}, 0.003, 0.2));
  });

  it("takes half of pure water's scattering as backward and 1.83 % of particles' (Petzold 1972 as in public code)", () => {
    expect(backscattering(flat(0.002), flat(0.002))[0]).toBeCloseTo(0.001, 12);
    expect(backscattering(flat(1.002), flat(0.002))[0]).toBeCloseTo(0.0183 + 0.001, 12);
  });
});

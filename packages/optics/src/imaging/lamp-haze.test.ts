import { describe, expect, it } from "vitest";
import { GRID_SIZE } from "../spectrum/grid.js";
import { backscattering, lampHazeRadiance } from "./lamp-haze.js";

const flat = (value: number) => new Float64Array(GRID_SIZE).fill(value);
const geometry = { subjectDistance_m: 1, lampDistance_m: 1, offset_m: 0.3, beamAngle_deg: 178 };
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

import { describe, expect, it } from "vitest";
import { jerlovKd } from "./jerlov-1976.js";
import { pathAttenuation } from "./path-attenuation.js";
import { waterFromKd } from "./water-optics.js";

describe("attenuation on a short path", () => {
  it("lies between absorption and beam attenuation, and moves from one to the other with the share lost", () => {
    const water = waterFromKd(jerlovKd("3C"));
    expect(Array.from(pathAttenuation(water, 0))).toEqual(Array.from(water.absorption_per_m));
    expect(Array.from(pathAttenuation(water, 1))).toEqual(Array.from(water.beam_attenuation_per_m));
    pathAttenuation(water).forEach((k, i) => {
      expect(k).toBeCloseTo((water.absorption_per_m[i] + water.beam_attenuation_per_m[i]) / 2, 14);
    });
  });
});

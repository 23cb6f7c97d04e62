import { describe, expect, it } from "vitest";
import { GRID_SIZE } from "../spectrum/grid.js";
import { veilingLight } from "./haze.js";

const rising = (from: number, step: number) => new Float64Array(GRID_SIZE).map((_, i) => from + step * i);

// Radiative transfer over a path of even water, each wavelength by itself: dI/dr = c (B - I), whose solution from a black
// subject is B (1 - exp(-c r)). Solved here in small steps (Runge-Kutta, order 4), not by the formula.
describe("light that water adds over a path", () => {
  it("is what the transfer equation gathers from a black subject on", () => {
    const openWater = rising(0.5, 0.02);
    const attenuation_per_m = rising(0.1, 0.01);
    const distance_m = 3;
    const veil = veilingLight(
      openWater,
      attenuation_per_m.map((c) => Math.exp(-c * distance_m)),
    );
    const steps = 300;
    const h = distance_m / steps;
    attenuation_per_m.forEach((c, i) => {
      let light = 0;
      const slope = (at: number) => c * (openWater[i] - at);
      for (let n = 0; n < steps; n++) {
        const k1 = slope(light);
        const k2 = slope(light + (h / 2) * k1);
        const k3 = slope(light + (h / 2) * k2);
        const k4 = slope(light + h * k3);
        light += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
      }
      expect(veil[i]).toBeCloseTo(light, 9);
    });
  });

  it("is none over no path, and open water over an endless one", () => {
    const openWater = rising(1, 0.1);
    expect(veilingLight(openWater, new Float64Array(GRID_SIZE).fill(1))).toEqual(new Float64Array(GRID_SIZE));
    expect(veilingLight(openWater, new Float64Array(GRID_SIZE))).toEqual(openWater);
  });
});

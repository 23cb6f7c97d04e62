import { describe, expect, it } from "vitest";
import { FIRST_NM, STEP_NM } from "../spectrum/grid.js";
import { iceTransmittance } from "./ice-cover.js";

const at = (nm: number, ice_m: number, snow_m = 0) =>
  iceTransmittance(ice_m, snow_m)[(nm - FIRST_NM) / STEP_NM];

describe("daylight through ice and snow", () => {
  it("dies in thick ice by 0.6/m at 500 nm, the clearest ice of Grenfell & Maykut 1977", () => {
    expect(Math.log(at(500, 4) / at(500, 5))).toBeCloseTo(0.6, 1);
  });

  it("dies in deep snow by 16/m at 500 nm, dense dry snow of Grenfell & Maykut 1977", () => {
    expect(Math.log(at(500, 0, 0.5) / at(500, 0, 0.6)) / 0.1).toBeCloseTo(16, 0);
  });

  it("reddens nothing: extinction is nearly even from 400 to 550 nm and rises rapidly above 600 (Grenfell & Maykut 1977)", () => {
    const K = (nm: number) => Math.log(at(nm, 2) / at(nm, 3));
    expect(K(400) / K(500)).toBeGreaterThan(0.8);
    expect(K(550) / K(500)).toBeLessThan(1.4);
    expect(K(700) / K(500)).toBeGreaterThan(2);
  });

  it("is all that arrives where there is no ice, and solves the two streams step by step (Runge-Kutta, order 4)", () => {
    expect(at(500, 0)).toBeCloseTo(1, 12);
    // From below, where nothing comes up, back to the top: what went down there is 1 over the transmittance.
    const k = 0.056 + (4 * Math.PI * 5.73e-9) / 600e-9;
    const r = 2.5;
    const steps = 2000;
    const h = 0.7 / steps;
    let [down, up] = [1, 0];
    const slope = (d: number, u: number) => [(k + r) * d - r * u, r * d - (k + r) * u] as const;
    for (let n = 0; n < steps; n++) {
      const [a1, b1] = slope(down, up);
      const [a2, b2] = slope(down + (h / 2) * a1, up + (h / 2) * b1);
      const [a3, b3] = slope(down + (h / 2) * a2, up + (h / 2) * b2);
      const [a4, b4] = slope(down + h * a3, up + h * b3);
      down += (h / 6) * (a1 + 2 * a2 + 2 * a3 + a4);
      up += (h / 6) * (b1 + 2 * b2 + 2 * b3 + b4);
    }
    expect(at(600, 0.7)).toBeCloseTo(1 / down, 4);
  });

  it("is less under more snow", () => {
    expect(at(500, 0.5, 0.1)).toBeLessThan(0.4 * at(500, 0.5));
  });
});

import { describe, expect, it } from "vitest";
import { illuminance_lx } from "../colour/observer.js";
import { surfaceDaylight } from "../daylight/surface-daylight.js";
import { spectrumFrom } from "../spectrum/grid.js";
import { throughSurface } from "./underwater-daylight.js";

const flat = (level: number) => spectrumFrom(() => level);

describe("daylight just below the surface", () => {
  it("loses 2.1 % of a sun overhead and 6.6 % of the sky on a calm sea (Fresnel; Gregg & Carder 1990)", () => {
    const sun = throughSurface({ direct: flat(1), diffuse: flat(0) }, 90, 0);
    expect(sun.downwelling[40]).toBeCloseTo(1 - 0.0211, 4);
    expect(sun.mu0).toBeCloseTo(1, 12);
    expect(sun.directShare).toBeCloseTo(1, 12);
    const sky = throughSurface({ direct: flat(0), diffuse: flat(1) }, 45, 0);
    expect(sky.downwelling[40]).toBeCloseTo(0.934, 12);
    expect(sky.directShare).toBe(0);
  });

  it("bends a sun at 30 degrees to 40.3 degrees from the vertical: asin(sin 60 / 1.34) (Snell)", () => {
    const { sunAngleInWater_deg, mu0 } = throughSurface({ direct: flat(1), diffuse: flat(0) }, 30, 0);
    expect(sunAngleInWater_deg).toBeCloseTo(40.26, 2);
    expect(mu0).toBeCloseTo(Math.cos((40.26 * Math.PI) / 180), 4);
  });

  it("mixes the path cosines of sun and sky as downwelling over scalar irradiance do", () => {
    // One part sun overhead (scalar 1) and one part sky of cosine 0.85 (scalar 1 / 0.85), each after its own reflection.
    const { mu0 } = throughSurface({ direct: flat(1), diffuse: flat(1) }, 90, 0);
    const sun = 1 - (0.34 / 2.34) ** 2;
    expect(mu0).toBeCloseTo((sun + 0.934) / (sun + 0.934 / 0.85), 10);
  });

  it("of a clear noon is about 100 000 lx above (common knowledge of meteorology: 100 to 130 klx) and 2 to 4 % less below", () => {
    const above = surfaceDaylight(80, 0);
    const lux = illuminance_lx(above.direct.map((d, i) => d + above.diffuse[i]));
    expect(lux).toBeGreaterThan(95000);
    expect(lux).toBeLessThan(135000);
    const below = illuminance_lx(throughSurface(above, 80, 4).downwelling);
    expect(below / lux).toBeGreaterThan(0.96);
    expect(below / lux).toBeLessThan(0.98);
  });
});

import { describe, expect, it } from "vitest";
import { illuminance_lx } from "../colour/observer.js";
import { daylightFromTable } from "../daylight/daylight-table.js";
import { ev100FromDome } from "../exposure/iso-2720.js";
import { multiply, pathTransmittance } from "../spectrum/combine.js";
import { throughSurface } from "../surface/underwater-daylight.js";
import { jerlovKd } from "../water/jerlov-1976.js";
import { kdUnderSun, waterFromKd } from "../water/water-optics.js";
import { floorReflectance } from "./floor-reflectance.js";
import { type Floor, lightAtDepth } from "./light-at-depth.js";
import { portTransmittance } from "./port-transmittance.js";

const WIND_M_S = 4;

/** Exposure value at ISO 100 behind the port, of a solid subject in type IA. */
function ev100(
  sun_deg: number,
  depth_m: number,
  { cosToSun, floor }: { cosToSun?: number; floor?: Floor },
): number {
  const below = throughSurface(daylightFromTable(sun_deg, 0), sun_deg, WIND_M_S);
  const water = waterFromKd(jerlovKd("IA"));
  const kd = kdUnderSun(water, below.mu0);
  const axis = { upSine: 0, ...(cosToSun === undefined ? {} : { cosToSun }) };
  const over = lightAtDepth({ ...below, depth_m }, water, kd, { axis, ...(floor ? { floor } : {}) });
  const light = multiply(multiply(pathTransmittance(kd, depth_m), below.downwelling), over.subject);
  return ev100FromDome(portTransmittance() * illuminance_lx(light));
}
const BEHIND = 0.827;

describe("a solid subject by day", () => {
  it("is never darker under a higher sun, where nobody said which way the camera looks", () => {
    const values = [15, 25, 35, 45, 55, 65, 75, 85].map((sun) => ev100(sun, 6, {}));
    for (let n = 1; n < values.length; n += 1) expect(values[n]).toBeGreaterThan(values[n - 1]);
  });

  it("with the sun behind the camera is not darker at noon than in the morning", () => {
    expect(ev100(88, 6, { cosToSun: BEHIND })).toBeGreaterThan(ev100(35, 6, { cosToSun: BEHIND }));
  });

  it("is brighter at 1 m over sand at 2 m than at 5 m over coral at 8 m, under a sun 80 degrees high", () => {
    const sand = { reflectance: floorReflectance("sand"), depth_m: 2 };
    const coral = { reflectance: floorReflectance("coral"), depth_m: 8 };
    expect(ev100(80, 1, { cosToSun: BEHIND, floor: sand })).toBeGreaterThan(
      ev100(80, 5, { cosToSun: BEHIND, floor: coral }) + 0.5,
    );
  });

  it("just under the surface loses 1 to 2 stops on sunny 16 (common practice, no published source)", () => {
    // f/16 at 1/100 s: EV 14.64.
    expect(14.64 - ev100(60, 0.1, { cosToSun: BEHIND })).toBeGreaterThan(1);
    expect(14.64 - ev100(60, 0.1, { cosToSun: BEHIND })).toBeLessThan(2);
  });
});

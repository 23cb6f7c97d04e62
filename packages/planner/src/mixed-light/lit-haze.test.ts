// Proportions that the haze over a grey must keep; its closed form in clear water is tested beside the laws of mixed light.

import { atNight, daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import {
  backscattering,
  beamAngleInWater_deg,
  illuminance_lx,
  lampHazeRadiance,
  multiply,
  PURE_WATER_SCATTERING_PER_M,
  scale,
} from "@sunfathom/optics";
import { expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { lampFilter, lampIntensity_cd, lampSpectrum } from "../light/lamps.js";
import { lampLightAt, towardsCamera, underwater } from "../light/underwater.js";
import type { Lamp } from "../scene/scene.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { hazeOverGrey } from "./lit-haze.js";

const worldOf = (lamps: Lamp[], nuisance: Partial<Nuisance> = {}) =>
  underwater(conditionsOf({ ...atNight(daylightScene("II", 45, 10)), lamps }), { ...NOMINAL, ...nuisance });
const haze = (lamps: Lamp[], nuisance?: Partial<Nuisance>) => hazeOverGrey(worldOf(lamps, nuisance));

it("goes with both lights alike: however bright the lamps and however sure of it, the ratio stays", () => {
  const once = haze([TWO_LAMPS]);
  expect(once).toBeGreaterThan(0);
  expect(haze([{ ...TWO_LAMPS, flux_lm: 16_000 }])).toBeCloseTo(once, 12);
  expect(haze([TWO_LAMPS, TWO_LAMPS])).toBeCloseTo(once, 12);
  expect(haze([TWO_LAMPS], { lampIntensityScale: 3 })).toBeCloseTo(once, 12);
});

it("is less the farther the lamps stand from the line of sight, and the narrower their beam", () => {
  expect(haze([TWO_LAMPS], { lampOffsetScale: 1.5 })).toBeLessThan(haze([TWO_LAMPS]));
  expect(haze([{ ...TWO_LAMPS, beam_angle_deg: 40 }])).toBeLessThan(haze([TWO_LAMPS]));
});

it("takes a beam measured in air as it is in water", () => {
  const air: Lamp = { ...TWO_LAMPS, beam_angle_medium: "air", beam_angle_deg: 90 };
  const water: Lamp = { ...TWO_LAMPS, beam_angle_deg: beamAngleInWater_deg(90) };
  expect(haze([air])).toBeCloseTo(haze([water]), 9);
});

it("is the radiance of the lamps' lit water over a grey of 18 % that they light, through the same water", () => {
  const lamp: Lamp = { ...TWO_LAMPS, filter_kind: "blue", filter_density: 0.6 };
  const world = worldOf([lamp]);
  const intensity = scale(multiply(lampSpectrum(lamp), lampFilter(lamp)), lampIntensity_cd(lamp));
  const lit = lampHazeRadiance(
    intensity,
    backscattering(world.water.scattering_per_m, PURE_WATER_SCATTERING_PER_M),
    world.path_per_m,
    { subjectDistance_m: 1, lampDistance_m: 0.8, offset_m: 0.35, beamAngle_deg: 100 },
  );
  const grey = scale(multiply(lampLightAt(world), towardsCamera(world)), 0.18 / Math.PI);
  expect(hazeOverGrey(world)).toBeCloseTo(illuminance_lx(lit) / illuminance_lx(grey), 12);
});

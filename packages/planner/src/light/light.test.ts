// The smaller parts of a scene's light.

import { daylightScene, NIGHT_WRECK, REEF_WITH_LAMPS } from "@sunfathom/fixtures/scenes";
import { CLEAR, filterTransmittance, ramanDownwelling, sunPosition, WAVELENGTHS_NM } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { bisect } from "./bisect.js";
import { conditionsOf } from "./conditions.js";
import { daylightUnder, scaledDaylight } from "./daylight.js";
import { highestSun_deg } from "./highest-sun.js";
import { redTrustedTo_m } from "./inelastic.js";
import { hasLensFilter, lensFilterOf } from "./lens-filter.js";
import { lightSources } from "./sources.js";
import { downwellingAt, underwater } from "./underwater.js";

const reef = daylightScene("IB", 45, 8);
const { sun_elevation_deg: _, ...withoutSun } = reef;
const placed = (time: string): Scene => ({
  ...withoutSun,
  daylight_basis: "place_time",
  latitude_deg: 20,
  longitude_deg: -128.4,
  time,
});

describe("bisection", () => {
  it("finds where a condition ends, from below, to the width asked for: of x^2 < 2 the square root", () => {
    const found = bisect((x) => x * x < 2, 0, 4, 1e-6);
    expect(found).toBeLessThanOrEqual(Math.SQRT2);
    expect(Math.SQRT2 - found).toBeLessThan(1e-6);
  });

  it("gives an end back where the condition holds everywhere or nowhere", () => {
    expect(bisect(() => true, 1, 3, 0.01)).toBeCloseTo(3, 1);
    expect(bisect(() => false, 1, 3, 0.01)).toBe(1);
  });
});

describe("daylight, brighter or darker", () => {
  const daylight = daylightUnder({ elevation_deg: 45 }, reef);

  it("scales above and below the surface alike, and leaves its directions", () => {
    const bright = scaledDaylight(daylight, 1.4, 1);
    expect(bright.above[34] / daylight.above[34]).toBeCloseTo(1.4, 12);
    expect(bright.below.downwelling[34] / daylight.below.downwelling[34]).toBeCloseTo(1.4, 12);
    expect(bright.below).toMatchObject({
      mu0: daylight.below.mu0,
      directShare: daylight.below.directShare,
      sunAngleInWater_deg: daylight.below.sunAngleInWater_deg,
    });
    expect(scaledDaylight(daylight, 1, 1)).toBe(daylight);
  });

  it("loses a few per cent at the surface (water reflects 2 to 7 % of daylight: Mobley 1994, from memory)", () => {
    const lost = 1 - daylight.below.downwelling[34] / daylight.above[34];
    expect(lost).toBeGreaterThan(0.02);
    expect(lost).toBeLessThan(0.07);
  });
});

describe("the highest sun of a day", () => {
  it("is that of the noon next to the instant, at its place: by day as in the night before and after", () => {
    // Noon is near 20:41 UTC at 128.4 degrees west; around the equinox 90 - 20 = 70 degrees high.
    const noon = Math.max(
      ...Array.from({ length: 240 }, (_left, minute) => {
        const at = new Date(Date.parse("2026-03-20T18:41:00Z") + minute * 60_000);
        return sunPosition({ latitude_deg: 20, longitude_deg: -128.4 }, at).elevation_refracted_deg;
      }),
    );
    expect(Math.abs(noon - 70)).toBeLessThan(1);
    for (const time of ["2026-03-20T17:20:00Z", "2026-03-20T20:41:00Z", "2026-03-21T00:20:00Z"]) {
      const highest = highestSun_deg(conditionsOf(placed(time)));
      expect(highest).toBeLessThanOrEqual(noon + 0.2);
      // A quarter of an hour off noon costs less than half a degree here.
      expect(highest).toBeGreaterThan(noon - 0.5);
    }
  });

  it("is a typical 60 degrees where place and day are not known", () => {
    expect(highestSun_deg(conditionsOf(reef))).toBe(60);
    expect(highestSun_deg(conditionsOf(NIGHT_WRECK))).toBe(60);
  });
});

describe("the depth to which red is trusted", () => {
  it("is where inelastic red at 650 nm has grown to what comes down from the surface (Raman: Bartlett 1998)", () => {
    const world = underwater(conditionsOf(reef), NOMINAL);
    const depth_m = redTrustedTo_m(world) ?? Number.NaN;
    const i = (650 - 380) / 5;
    const surface = downwellingAt(world, 0);
    const ratio = (at_m: number) =>
      ramanDownwelling(surface, world.kd_per_m, at_m)[i] / downwellingAt(world, at_m)[i];
    expect(ratio(depth_m)).toBeLessThan(1);
    expect(ratio(depth_m + 0.01)).toBeGreaterThanOrEqual(1);
  });

  it("is none without daylight", () => {
    expect(redTrustedTo_m(underwater(conditionsOf(NIGHT_WRECK), NOMINAL))).toBeUndefined();
  });
});

describe("the filter on the lens", () => {
  const curve = Array.from(WAVELENGTHS_NM, (wavelength_nm) => ({ wavelength_nm, transmittance: 0.3 }));

  it("is its kind's and density's, in the shape in question, or the measured curve before both", () => {
    const red: Scene = { ...reef, filter_kind: "red", filter_density: 0.6 };
    const filterShape = { shift_nm: 10 };
    const shaped = lensFilterOf(red, { ...NOMINAL, filterShape });
    expect(shaped).toEqual(filterTransmittance("red", 0.6, filterShape));
    expect(shaped).not.toEqual(lensFilterOf(red, NOMINAL));
    lensFilterOf({ ...red, filter_transmittance: curve }, NOMINAL).forEach((t) => {
      expect(t).toBeCloseTo(0.3, 12);
    });
  });

  it("is clear where none is mounted, or none that is described", () => {
    expect(lensFilterOf(reef, NOMINAL)).toEqual(CLEAR);
    expect(lensFilterOf({ ...reef, filter_kind: "red" }, NOMINAL)).toEqual(CLEAR);
    expect(lensFilterOf({ ...reef, filter_density: 0.6 }, NOMINAL)).toEqual(CLEAR);
    expect(hasLensFilter(reef)).toBe(false);
    expect(hasLensFilter({ ...reef, filter_kind: "red" })).toBe(true);
    expect(hasLensFilter({ ...reef, filter_transmittance: curve })).toBe(true);
  });

  it("names its shapes as a source where they were assumed, not where it was measured", () => {
    const sourcesOf = (change: Partial<Scene>) => lightSources(conditionsOf({ ...reef, ...change }));
    const assumed = { filter_kind: "red", filter_density: 0.6 } as const;
    expect(sourcesOf({})).not.toContain("filter_shapes");
    expect(sourcesOf(assumed)).toContain("filter_shapes");
    expect(sourcesOf({ ...assumed, filter_transmittance: curve })).not.toContain("filter_shapes");
  });
});

describe("the sources of a scene's light", () => {
  const DAYLIGHT = ["bird_riordan_1986", "kasten_czeplak_1980", "gregg_carder_1990", "light_field"];
  const LAMPS = ["cie_led_illuminants", "lamp_beam", "path_attenuation"];

  it("are those of what lights it: water and sensor always, daylight, a sun from a place, lamps", () => {
    const by = (scene: Scene) => lightSources(conditionsOf(scene));
    const always = [
      "jerlov_1976",
      "williamson_hollins_2022",
      "kirk_1984",
      "mean_sensor",
      "cie_1931_observer",
    ];
    const sorted = (...sources: string[]) => [...always, ...sources].sort();
    expect(by(reef).sort()).toEqual(sorted("pope_fry_1997", ...DAYLIGHT));
    expect(by(NIGHT_WRECK).sort()).toEqual(sorted("pope_fry_1997", ...LAMPS));
    expect(by(REEF_WITH_LAMPS).sort()).toEqual(sorted("pope_fry_1997", ...DAYLIGHT, ...LAMPS));
    expect(by(placed("2026-03-20T09:00:00Z"))).toContain("sun_position");
  });
});

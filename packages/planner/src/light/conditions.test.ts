import { daylightScene } from "@sunfathom/fixtures/scenes";
import { sunPosition } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { attenuation, filterChoice } from "../index.js";
import type { Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { conditionsOf } from "./conditions.js";
import { depthsOf } from "./depths.js";

const { sun_elevation_deg: _sun, ...withoutSun } = daylightScene("IB", 45, 8);
const { water_type: _water, ...withoutWater } = daylightScene("IB", 45, 8);

/** A place on the equator in the west Pacific. */
const PLACE = { latitude_deg: 0.5, longitude_deg: -128.4 };
const there = (time: string): Scene => ({ ...withoutSun, daylight_basis: "place_time", ...PLACE, time });

function problemOf(scene: Scene): SceneProblem {
  try {
    conditionsOf(scene);
  } catch (error) {
    if (error instanceof SceneProblem) return error;
    throw error;
  }
  throw new Error("no problem");
}

describe("daylight from a place and a time", () => {
  it("is that of the sun at its computed height: the same answer as with the height given", () => {
    const time = "2026-03-20T18:00:00Z";
    const { elevation_refracted_deg } = sunPosition(PLACE, new Date(time));
    expect(elevation_refracted_deg).toBeGreaterThan(20);
    const placed = attenuation(there(time));
    const given = attenuation({
      ...withoutSun,
      daylight_basis: "sun",
      sun_elevation_deg: elevation_refracted_deg,
    });
    expect(placed.depths).toEqual(given.depths);
    expect(placed.reasons.map((r) => r.code)).toContain("sun_stands");
  });

  it("is none at night there, and a problem at dusk", () => {
    // At 128.4 degrees west local midnight is near 08:41 UTC; around the equinox the sun sets near 02:42 UTC.
    expect(conditionsOf(there("2026-03-20T08:40:00Z")).daylight).toBeUndefined();
    expect(problemOf(there("2026-03-21T02:30:00Z")).code).toBe("sun_too_low");
    expect(() => filterChoice(there("2026-03-20T08:40:00Z"))).toThrow(SceneProblem);
  });
});

describe("the water of a scene", () => {
  it.each([
    { chlorophyll_mg_m3: 0.3 },
    { secchi_depth_m: 12, water_hue: "blue_green" as const },
    { visibility_m: 15, water_hue: "blue_green" as const },
    {
      kd_samples: [
        { wavelength_nm: 490, kd_per_m: 0.06 },
        { wavelength_nm: 600, kd_per_m: 0.27 },
      ],
    },
    { water_type: "II" },
  ])(
    "comes from any one description ($chlorophyll_mg_m3 $secchi_depth_m $visibility_m $water_type)",
    (basis) => {
      const { water } = conditionsOf({ ...withoutWater, ...basis });
      expect(water.kd_reference_per_m.every((k) => k > 0 && Number.isFinite(k))).toBe(true);
      expect(water.sources.length).toBeGreaterThan(0);
      expect(water.remainder_sigmas.length).toBeGreaterThan(0);
    },
  );

  it("is missed where none is described, or none that is known", () => {
    expect(problemOf(withoutWater).code).toBe("water_missing");
    expect(problemOf({ ...withoutWater, water_type: "4C" }).code).toBe("water_missing");
  });

  it("is refused outside the domain of its description, with the field named", () => {
    const problem = problemOf({ ...withoutWater, chlorophyll_mg_m3: 500 });
    expect(problem.code).toBe("chlorophyll_out_of_range");
    expect(problem.field).toBe("chlorophyll_mg_m3");
  });
});

describe("the depths that stand for a range", () => {
  it("are seven, equally spaced, both ends exact, and one for a single depth", () => {
    expect(depthsOf(daylightScene("IB", 45, 5, 17))).toEqual([5, 7, 9, 11, 13, 15, 17]);
    expect(depthsOf(daylightScene("IB", 45, 0.1, 0.3)).at(-1)).toBe(0.3);
    expect(depthsOf(daylightScene("IB", 45, 9))).toEqual([9]);
  });
});

import { expect, it } from "vitest";
import { filterMounting } from "./filter-mounting.js";
import { ghostStops } from "./ghosts.js";
import { COMPACT, FISHEYE, sceneOf } from "./mounting-scenes.test-support.js";
import { weightInWater_g } from "./weight.js";

const OF_67 = { clear_diameter_mm: 64, thickness_mm: 5, material: "glass" } as const;

it("a filter weighs in water what it weighs in air less the water in its place, by hand", () => {
  // A disc of 64 by 2 mm: 6.434 cm3; a rim from 64 to 70 mm, 5 mm long: 3.157 cm3. Glass 2.51, aluminium 2.70, sea water 1.025.
  const air_g = 6.434 * 2.51 + 3.157 * 2.7;
  expect(weightInWater_g(OF_67).likely).toBeCloseTo(air_g - (6.434 + 3.157) * 1.025, 1);
});

it("acrylic hardly weighs anything but its rim, and a disc is no thicker than the rim", () => {
  const [glass, resin] = (["glass", "resin"] as const).map((material) =>
    weightInWater_g({ ...OF_67, material }),
  );
  // 6.434 cm3 that are lighter by 2.51 - 1.19.
  expect((glass?.likely ?? 0) - (resin?.likely ?? 0)).toBeCloseTo(6.434 * 1.32, 2);
  const thin = weightInWater_g({ ...OF_67, thickness_mm: 1 });
  expect(thin.low).toBe(thin.high);
});

it("is told in front of the lens where the size is known, and not of a sheet", () => {
  expect(filterMounting(COMPACT).filter_weight_in_water_g?.likely).toBeCloseTo(
    weightInWater_g(OF_67).likely,
    9,
  );
  expect(filterMounting(FISHEYE)).not.toHaveProperty("filter_weight_in_water_g");
});

it("a ghost is what two surfaces reflect: 4 % each of glass in air (Fresnel at 1.5: 0.04), 0.32 % in water", () => {
  expect(2 ** -ghostStops(1.5)).toBeCloseTo(0.04 ** 2, 9);
  expect(2 ** -ghostStops(1.5 / 1.34)).toBeCloseTo(0.00317 ** 2, 7);
  const [outside, inside] = [COMPACT, sceneOf({ focal_length_mm: 24, holder: "screw_on_lens" })].map(
    (scene) => filterMounting(scene).reasons.find(({ code }) => code.startsWith("ghosts")),
  );
  expect(outside?.code).toBe("ghosts_outside");
  expect(inside?.code).toBe("ghosts_inside");
});

import { floorReflectance, GRID_SIZE } from "@sunfathom/optics";
import { expect, it } from "vitest";
import { scaledFloor, seaFloorOf } from "./sea-floor.js";

const AT_550_NM = (550 - 380) / 5;

it("is what the scene says, by name or by its curve, and none in deep water", () => {
  expect(seaFloorOf({ bottom: "none" })).toBeUndefined();
  expect(seaFloorOf({})).toBeUndefined();
  expect(seaFloorOf({ bottom: "seagrass", bottom_depth_m: 9 })).toEqual({
    depth_m: 9,
    reflectance: floorReflectance("seagrass"),
  });
  const samples = [
    { wavelength_nm: 500, reflectance: 0.2 },
    { wavelength_nm: 600, reflectance: 0.4 },
  ];
  const curve = seaFloorOf({ bottom_reflectance: samples, bottom_depth_m: 4 })?.reflectance;
  // Straight between the samples, level beyond them.
  expect(curve?.[AT_550_NM]).toBeCloseTo(0.3, 12);
  expect([curve?.[0], curve?.[GRID_SIZE - 1]]).toEqual([0.2, 0.4]);
});

it("sends back no more than falls on it, however pale", () => {
  const floor = { depth_m: 3, reflectance: new Float64Array(GRID_SIZE).fill(0.6) };
  expect(scaledFloor(floor, 0.5).reflectance[0]).toBeCloseTo(0.3, 12);
  expect(scaledFloor(floor, 2)).toEqual({ depth_m: 3, reflectance: new Float64Array(GRID_SIZE).fill(1) });
});

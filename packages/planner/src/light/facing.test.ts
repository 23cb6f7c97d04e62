import { describe, expect, it } from "vitest";
import { Z90 } from "../uncertainty/normal.js";
import { axisToCamera, axisToSun, cosBehindCamera } from "./facing.js";

const NORTHERN_NOON = { elevation_deg: 50, azimuth_deg: 180 };
const cosOf = (view: Parameters<typeof cosBehindCamera>[0], z = 0) => cosBehindCamera(view, NORTHERN_NOON, z);

describe("where the sun stands against the camera", () => {
  it("is where half of the directions of the side that was named face it more, and half less", () => {
    expect(cosOf({ sun_side: "behind_camera" })).toBeCloseTo(Math.cos(Math.PI / 6), 6);
    expect(cosOf({ sun_side: "beside" })).toBeCloseTo(0, 6);
    expect(cosOf({ sun_side: "in_frame" })).toBeCloseTo(-Math.cos(Math.PI / 6), 6);
    expect(cosOf({ sun_side: "unknown" })).toBeCloseTo(0, 6);
    expect(cosOf({})).toBe(cosOf({ sun_side: "unknown" }));
  });

  it("lies, in doubt, at the tenth of the side's directions that face it most or least", () => {
    expect(cosOf({ sun_side: "behind_camera" }, Z90)).toBeCloseTo(Math.cos((6 * Math.PI) / 180), 6);
    expect(cosOf({ sun_side: "behind_camera" }, -Z90)).toBeCloseTo(Math.cos((54 * Math.PI) / 180), 6);
    expect(cosOf({}, Z90)).toBeCloseTo(Math.cos((18 * Math.PI) / 180), 6);
    expect(cosOf({}, -Z90)).toBeCloseTo(-Math.cos((18 * Math.PI) / 180), 6);
  });

  it("follows from a heading and where the sun stands: north at noon of the northern half, the sun is behind", () => {
    expect(cosOf({ camera_heading_deg: 0 })).toBeCloseTo(1, 12);
    expect(cosOf({ camera_heading_deg: 360 })).toBeCloseTo(1, 12);
    expect(cosOf({ camera_heading_deg: 180 })).toBeCloseTo(-1, 12);
    expect(cosOf({ camera_heading_deg: 90 })).toBeCloseTo(0, 12);
    expect(cosOf({ camera_heading_deg: 300 })).toBeCloseTo(0.5, 12);
    expect(cosOf({ camera_heading_deg: 300 }, 1)).toBeGreaterThan(0.5);
    expect(cosOf({ camera_heading_deg: 300 }, -1)).toBeLessThan(0.5);
  });
});

describe("the way from the subject to the camera", () => {
  it("points up where the camera looks down", () => {
    expect(axisToCamera({ camera_tilt_deg: -90 }, 1)).toEqual({ upSine: 1, cosToSun: 1 });
    expect(axisToCamera({ camera_tilt_deg: 30 }, 0.5).upSine).toBeCloseTo(-0.5, 12);
    expect(Math.abs(axisToCamera({}, 1).upSine)).toBe(0);
  });

  it("is level towards the sun, and 15 degrees off it by a deviation (from memory)", () => {
    expect(axisToSun(0)).toEqual({ upSine: 0, cosToSun: 1 });
    expect(axisToSun(1).cosToSun).toBeCloseTo(Math.cos(Math.PI / 12), 12);
  });
});

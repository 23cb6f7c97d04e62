import { describe, expect, it } from "vitest";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { filterMounting } from "./filter-mounting.js";
import { lensOf } from "./lens.js";
import { ACTION_CAMERA, FISHEYE, sceneOf } from "./mounting-scenes.test-support.js";

function problemOf(scene: FilterMountingScene): SceneProblem {
  try {
    filterMounting(scene);
  } catch (error) {
    if (error instanceof SceneProblem) return error;
    throw error;
  }
  throw new Error("answered");
}

describe("the lens of a scene", () => {
  it("has its field from focal length and format, or its focal length from field and format", () => {
    // 24 mm on 24 x 36 mm: 84 degrees over the diagonal, as lens makers print it.
    const byFocal = lensOf(sceneOf({ focal_length_mm: 24 }, "sensor_diagonal_mm"));
    expect(2 * byFocal.half_deg).toBeCloseTo(84, 0);
    expect(byFocal.pupil_mm).toBe(1.5);
    expect(byFocal.reasons.map(({ code }) => code)).toEqual(["format_assumed"]);
    const byField = lensOf(sceneOf({ field_of_view_deg: 84.06 }, "focal_length_mm"));
    expect(byField.focal_mm).toBeCloseTo(24, 1);
    expect(byField.reasons).toEqual([]);
  });

  it("is taken for full frame, or for an action camera's format, where none is given, unless field and focal length say it", () => {
    const assumed = (scene: FilterMountingScene) =>
      lensOf(scene).reasons.map(({ code, basis, parameters }) => [code, basis, parameters]);
    // 24 x 36 mm, and 7.7 mm from memory.
    expect(assumed(sceneOf({}, "sensor_diagonal_mm"))).toEqual([
      ["format_assumed", "common_practice", { diagonal_mm: Math.hypot(24, 36) }],
    ]);
    const { field_of_view_deg: _, ...unmeasured } = ACTION_CAMERA;
    const small = { ...unmeasured, focal_length_mm: 3 };
    expect(assumed(small)).toEqual([["format_assumed", "common_practice", { diagonal_mm: 7.7 }]]);
    // Equisolid: r = 2 f sin(w / 2), w being half the field.
    expect(lensOf(small).half_deg).toBeCloseTo((2 * Math.asin(7.7 / 2 / (2 * 3)) * 180) / Math.PI, 9);
    expect(assumed(sceneOf({ field_of_view_deg: 105 }, "sensor_diagonal_mm"))).toEqual([]);
  });

  it("may see as wide as its port lets through, and no wider", () => {
    const fisheye = (field_of_view_deg: number, port_kind: "flat" | "dome") =>
      lensOf({ ...FISHEYE, port_kind, field_of_view_deg }).half_deg;
    expect([fisheye(170, "flat"), fisheye(220, "dome")]).toEqual([85, 110]);
    expect(() => fisheye(170.5, "flat")).toThrow(SceneProblem);
    expect(() => fisheye(220.5, "dome")).toThrow(SceneProblem);
  });

  it("may be given thrice over within a tenth, as real lenses bend lines", () => {
    expect(lensOf(sceneOf({ field_of_view_deg: 105 })).half_deg).toBe(52.5);
  });
});

describe("lenses that cannot be", () => {
  it.each<[string, FilterMountingScene, string, string]>([
    [
      "neither focal length nor field",
      sceneOf({}, "focal_length_mm"),
      "lens_field_unknown",
      "focal_length_mm",
    ],
    [
      "180 degrees in straight lines",
      sceneOf({ field_of_view_deg: 180 }, "focal_length_mm"),
      "field_too_wide",
      "field_of_view_deg",
    ],
    [
      "180 degrees through a flat port",
      { ...FISHEYE, port_kind: "flat" },
      "field_too_wide",
      "field_of_view_deg",
    ],
    [
      "a fisheye that sees backwards",
      { ...FISHEYE, field_of_view_deg: 230 },
      "field_too_wide",
      "field_of_view_deg",
    ],
    [
      "a format wider than the image circle",
      sceneOf({ lens_kind: "fisheye", focal_length_mm: 8 }),
      "corner_outside_image_circle",
      "focal_length_mm",
    ],
    [
      "a field that contradicts",
      sceneOf({ field_of_view_deg: 80 }),
      "lens_contradicts",
      "sensor_diagonal_mm",
    ],
    [
      "two rings of one id",
      sceneOf({
        rings: [
          { id: "a", from_mm: 67, to_mm: 77, thickness_mm: 3 },
          { id: "a", from_mm: 67, to_mm: 77, thickness_mm: 3 },
        ],
      }),
      "ring_id_twice",
      "rings",
    ],
  ])("%s: a problem that names its code and field", (_, scene, code, field) => {
    const problem = problemOf(scene);
    expect([problem.code, problem.field]).toEqual([code, field]);
  });
});

describe("what the port makes of the picture", () => {
  it("a flat port turns 84 degrees into 60 and enlarges by a third; a dome keeps the field (Snell)", () => {
    const flat = filterMounting(sceneOf({ port_kind: "flat", focal_length_mm: 24 }, "dome_radius_mm")).port;
    expect(flat.field_in_water_deg).toBeCloseTo(60, 0);
    expect(flat.magnification).toBe(1.34);
    expect(flat.virtual_infinity_from_vertex_mm).toBeUndefined();
    const dome = filterMounting(sceneOf({ dome_radius_mm: 100 })).port;
    expect(dome.field_in_water_deg).toBe(dome.field_in_air_deg);
    // R / (n - 1) with n = 1.34, which is 3 R for n = 4/3.
    expect(dome.virtual_infinity_from_vertex_mm).toBeCloseTo(100 / 0.34, 8);
    expect(dome.virtual_infinity_from_centre_mm).toBeCloseTo(100 + 100 / 0.34, 8);
    expect(dome.magnification).toBeUndefined();
  });
});

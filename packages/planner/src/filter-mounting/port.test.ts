import { describe, expect, it } from "vitest";
import { lensOf } from "./lens.js";
import { ACTION_CAMERA, COMPACT, sceneOf, WIDE_ZOOM } from "./mounting-scenes.test-support.js";
import { portFigures, portReasons } from "./port.js";

const of = (scene: typeof WIDE_ZOOM) => portFigures(scene, lensOf(scene));
const codes = (scene: typeof WIDE_ZOOM) => portReasons(of(scene)).map(({ code }) => code);

it("the field in air is the lens's own, behind whatever port", () => {
  const rectilinear = (diagonal_mm: number, focal_mm: number) =>
    (2 * Math.atan(diagonal_mm / 2 / focal_mm) * 180) / Math.PI;
  expect(of(COMPACT).field_in_air_deg).toBeCloseTo(rectilinear(15.9, 8.8), 9);
  expect(of(WIDE_ZOOM).field_in_air_deg).toBeCloseTo(rectilinear(43.3, 16), 9);
  expect(of(ACTION_CAMERA).field_in_air_deg).toBe(140);
});

describe("a flat window", () => {
  it.each([
    ["port", COMPACT],
    ["of a watertight camera", ACTION_CAMERA],
  ])("%s narrows the field by Snell's law, enlarges, and brings things nearer (n = 1.34)", (_what, scene) => {
    const port = of(scene);
    const half = (port.field_in_air_deg / 2) * (Math.PI / 180);
    expect(port.field_in_water_deg).toBeCloseTo((2 * Math.asin(Math.sin(half) / 1.34) * 180) / Math.PI, 9);
    expect(port.magnification).toBe(1.34);
    expect(port.apparent_distance_share).toBeCloseTo(1 / 1.34, 12);
    expect(port.lateral_colour_percent).toBeGreaterThan(0);
    expect(port).not.toHaveProperty("virtual_infinity_from_vertex_mm");
    const [narrows, ...more] = portReasons(port);
    expect(more).toEqual([]);
    expect([narrows.code, narrows.basis]).toEqual(["flat_port_narrows", "computed"]);
    const parameters = narrows.parameters as Record<string, number>;
    expect(parameters["enlarged_percent"]).toBeCloseTo(34, 9);
    expect(parameters["field_in_water_deg"]).toBe(port.field_in_water_deg);
  });
});

// Sea water has an index of 1.346 at 450 nm (Quan & Fry 1995), so that blue stays in beyond asin(1.34 / 1.346), some 84.5 degrees.
it("has no lateral colour to tell of where blue no longer leaves the water", () => {
  const wide = { port_kind: "flat", lens_kind: "fisheye", field_of_view_deg: 170 } as const;
  const port = of(sceneOf(wide, "focal_length_mm", "dome_radius_mm"));
  expect(Object.keys(port)).not.toContain("lateral_colour_percent");
  const narrower = of(sceneOf({ ...wide, field_of_view_deg: 160 }, "focal_length_mm", "dome_radius_mm"));
  expect(narrower.lateral_colour_percent).toBeGreaterThan(0);
});

describe("a dome", () => {
  // A single spherical surface images infinity at R / (n - 1) from its vertex (textbook), and the centre is R behind it.
  it("keeps the field, and brings infinity near by its radius where that is known", () => {
    const port = of(WIDE_ZOOM);
    expect(port).toEqual({
      field_in_air_deg: port.field_in_air_deg,
      field_in_water_deg: port.field_in_air_deg,
      virtual_infinity_from_vertex_mm: expect.closeTo(110 / 0.34, 8),
      virtual_infinity_from_centre_mm: expect.closeTo(110 + 110 / 0.34, 8),
    });
    expect(codes(WIDE_ZOOM)).toEqual(["dome_keeps_field", "dome_brings_near"]);
    expect(portReasons(port).map(({ basis }) => basis)).toEqual(["computed", "computed"]);
    expect(portReasons(port)[1].parameters).toEqual({
      from_vertex_mm: port.virtual_infinity_from_vertex_mm,
      from_centre_mm: port.virtual_infinity_from_centre_mm,
    });
    const unknown = sceneOf({}, "dome_radius_mm");
    expect(Object.keys(of(unknown))).toEqual(["field_in_air_deg", "field_in_water_deg"]);
    expect(codes(unknown)).toEqual(["dome_keeps_field"]);
  });
});

// Guards what a lens that cannot be is told: which field, and which numbers.
import { describe, expect, it } from "vitest";
import { FISHEYE, sceneOf } from "./mounting-scenes.test-support.js";
import { fieldTooWide, formatContradicts, lensUnknown, outsideImageCircle, ringIdTwice } from "./problems.js";

describe("a field too wide", () => {
  it("is told with what it is in front of, and how wide would be possible", () => {
    const scene = { ...FISHEYE, port_kind: "flat" as const };
    expect(fieldTooWide(scene, 230.04, 170).refusal).toEqual({
      code: "field_too_wide",
      parameters: {
        field_of_view_deg: 230,
        max_field_of_view_deg: 170,
        lens_kind: "fisheye",
        port_kind: "flat",
      },
    });
  });

  it("is one of the field given, or of the focal length that it follows from", () => {
    expect(fieldTooWide(FISHEYE, 230, 220).field).toBe("field_of_view_deg");
    expect(fieldTooWide(sceneOf({}), 180, 170).field).toBe("focal_length_mm");
  });
});

// A fisheye's image circle of 360 degrees has the radius 2 f (equisolid: r = 2 f sin(w / 2)), so the diameter 4 f.
it("a format beyond the image circle is told the circle, the format, and the shortest focal length for it", () => {
  const { refusal, field } = outsideImageCircle(8, 43.27);
  expect(field).toBe("focal_length_mm");
  expect(refusal).toEqual({
    code: "corner_outside_image_circle",
    parameters: { focal_length_mm: 8, image_circle_mm: 32, format_mm: 43.3, min_focal_length_mm: 10.8 },
  });
});

it("what contradicts, is unknown or stands twice is told by its code, its numbers and names, and its field", () => {
  const about = [formatContradicts(43.27, 20), lensUnknown(), ringIdTwice("r1")];
  expect(about.map(({ refusal: { code, parameters }, field }) => [code, parameters, field])).toEqual([
    ["lens_contradicts", { sensor_diagonal_mm: 43.3, follows_mm: 20 }, "sensor_diagonal_mm"],
    ["lens_field_unknown", {}, "focal_length_mm"],
    ["ring_id_twice", { id: "r1" }, "rings"],
  ]);
});

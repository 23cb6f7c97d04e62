// Guards what a lens that cannot be is told: which field, which numbers, and the way out that is open to it.
import { describe, expect, it } from "vitest";
import { ACTION_CAMERA, FISHEYE, sceneOf } from "./mounting-scenes.test-support.js";
import { fieldTooWide, formatContradicts, lensUnknown, outsideImageCircle, ringIdTwice } from "./problems.js";

describe("a field too wide", () => {
  it.each([
    ["in straight lines", sceneOf({ port_kind: "flat" }), "straight lines", ", or lens_kind fisheye"],
    [
      "of a fisheye behind a flat port",
      { ...FISHEYE, port_kind: "flat" as const },
      "reflects",
      ", or a dome",
    ],
    ["of an action camera", ACTION_CAMERA, "reflects", ", or a dome"],
    ["of a fisheye behind a dome", FISHEYE, "behind itself", ""],
  ])("%s is told why, and what would be possible", (_what, scene, why, instead) => {
    const problem = fieldTooWide(scene, 230.04, 170);
    expect(problem.code).toBe("field_too_wide");
    expect(problem.message).toContain("230.0 degrees");
    expect(problem.fields[0].message).toContain("230.0 degrees");
    expect(problem.fields[0].message).toContain(why);
    expect(problem.fields[0].allowed).toBe(`a field of at most 170 degrees in air${instead}`);
  });

  it("is one of the field given, or of the focal length that it follows from", () => {
    expect(fieldTooWide(FISHEYE, 230, 220).fields[0].field).toBe("field_of_view_deg");
    expect(fieldTooWide(sceneOf({}), 180, 170).fields[0].field).toBe("focal_length_mm");
  });
});

// A fisheye's image circle of 360 degrees has the radius 2 f (equisolid: r = 2 f sin(w / 2)), so the diameter 4 f.
it("a format beyond the image circle is told the circle, the format, and the shortest focal length for it", () => {
  const problem = outsideImageCircle(8, 43.27);
  expect([problem.code, problem.fields[0].field]).toEqual(["corner_outside_image_circle", "focal_length_mm"]);
  expect(problem.message).toBe("A fisheye of 8.0 mm does not reach the corners of a format of 43.3 mm.");
  expect(problem.fields[0].message).toContain("32.0 mm wide, the format's diagonal 43.3 mm");
  expect(problem.fields[0].allowed).toContain("at least 10.8 mm");
});

it("what contradicts, is unknown or stands twice is told by its code and the field that it is about", () => {
  const about = [formatContradicts(43.27, 20), lensUnknown(), ringIdTwice("r1")];
  expect(about.map(({ code, fields }) => [code, fields.map(({ field }) => field)])).toEqual([
    ["lens_contradicts", ["sensor_diagonal_mm"]],
    ["lens_field_unknown", ["focal_length_mm"]],
    ["ring_id_twice", ["rings"]],
  ]);
});

it("what contradicts, is unknown or stands twice is told with its numbers and names", () => {
  expect(formatContradicts(43.27, 20).fields[0].message).toBe(
    "43.3 mm, where focal length and field of view ask for 20.0 mm",
  );
  expect(formatContradicts(43.27, 20).fields[0].allowed).toContain("leave out one of");
  expect(lensUnknown().fields[0].allowed).toContain("field_of_view_deg");
  expect(lensUnknown().message).toContain("focal length");
  expect(lensUnknown().fields[0].message).toContain("neither");
  expect(ringIdTwice("r1").fields[0]).toEqual({
    field: "rings",
    message: "the id r1 is used twice",
    allowed: "a different id for each ring",
  });
  expect(ringIdTwice("r1").message).toBe("Two rings have the same id.");
});

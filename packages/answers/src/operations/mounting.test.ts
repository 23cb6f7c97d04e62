import { type MountingScene, mountingExamples } from "@sunfathom/contract";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contractAjv } from "../shape/contract-ajv.test-support.js";
import { toJson } from "../shape/to-json.js";
import { answer } from "./in-english.test-support.js";

const validate = contractAjv.getSchema("FilterMountingAnswer");

const { flat_port_and_rings, fisheye_behind_dome, action_camera_flip } = mountingExamples;

function bodyOf(scene: MountingScene) {
  const answered = answer("filter-mounting", scene);
  if (answered.status !== "ok") throw new Error(JSON.stringify(answered.problem));
  return JSON.parse(toJson(answered.body));
}

function problemOf(scene: object) {
  const answered = answer("filter-mounting", scene);
  if (answered.status === "ok") throw new Error("The scene was answered.");
  const { code, status, errors = [] } = answered.problem;
  return { code, status, errors: errors.map((error) => `${error.pointer} ${error.code}`) };
}

/** Scenes from bound to bound, in which fields go together as the rules ask. */
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const thread = fc.constantFrom(20, 37, 52, 62.5, 67, 77, 150);
const ring = fc.record({ from_mm: thread, to_mm: thread, thickness_mm: mm(0.5, 50) });
const lensField = fc.oneof(
  fc.record({ field_of_view_deg: mm(1, 220) }),
  fc.record({ field_of_view_deg: mm(1, 220), focal_length_mm: mm(1, 300) }),
  fc.record({ focal_length_mm: mm(1, 300), sensor_diagonal_mm: mm(3, 80) }),
);
const port = fc.oneof(
  fc.record({ port_kind: fc.constantFrom("flat" as const, "none" as const, "dome" as const) }),
  fc.record({ port_kind: fc.constant("dome" as const), dome_radius_mm: mm(20, 500) }),
);
const rest = fc.record(
  {
    f_number: mm(0.7, 64),
    lens_interchangeable: fc.boolean(),
    lens_thread_mm: thread,
    port_thread_mm: thread,
    entrance_pupil_distance_mm: mm(0.5, 200),
    holder: fc.constantFrom(
      ...(["screw_on_lens", "screw_on_port", "flip", "clip_on", "rear_sheet", "action_camera"] as const),
    ),
    filter_thread_mm: thread,
    filter_clear_diameter_mm: mm(5, 300),
    filter_thickness_mm: mm(0.5, 30),
    filter_change_underwater: fc.constantFrom("none" as const, "flip" as const, "clip_on" as const),
    rear_fixing: fc.constantFrom("slot" as const, "tape" as const),
    sheet_thickness_mm: mm(0.01, 3),
    sheet_refractive_index: mm(1.3, 1.8),
    rings: fc
      .array(ring, { maxLength: 32 })
      .map((rings) => rings.map((one, index) => ({ id: `${index}`, ...one }))),
  },
  { requiredKeys: [] },
);
const lensKind = fc.constantFrom("wide" as const, "standard" as const, "fisheye" as const);
const scenes: fc.Arbitrary<MountingScene> = fc
  .tuple(port, lensKind, lensField, rest)
  .map(([where, lens_kind, field, others]) => ({ ...where, lens_kind, ...field, ...others }));

describe("filter-mounting", () => {
  it.each(Object.entries(mountingExamples))("answers %s, and keeps its own description", (_, { scene }) => {
    expect(validate?.(bodyOf(scene)), contractAjv.errorsText(validate?.errors)).toBe(true);
  });

  it("leads the owned rings to the filter in front of a flat port's lens", () => {
    const { holder, place, ring_chain } = bodyOf(flat_port_and_rings.scene);
    expect([holder, place]).toEqual(["screw_on_lens", "on_lens"]);
    expect(ring_chain).toEqual({
      closes: true,
      from_mm: 52,
      to_mm: 67,
      rings: flat_port_and_rings.scene.rings.slice(0, 2),
      total_thickness_mm: 5,
    });
  });

  it("puts a sheet of the slot's size behind a fisheye", () => {
    const { holder, rear_sheet, vignetting } = bodyOf(fisheye_behind_dome.scene);
    expect(holder).toBe("rear_sheet");
    // Plane-parallel plate (any textbook of optics): shift = t (1 - 1/n) = 0.1 (1 - 1/1.5).
    expect(rear_sheet).toMatchObject({ cut_width_mm: 29.5, cut_height_mm: 23.5, focus_shift_mm: 0.033 });
    expect(vignetting).toBeUndefined();
  });

  it("swings a filter before an action camera's window", () => {
    const { holder, place, filter_change_underwater } = bodyOf(action_camera_flip.scene);
    expect([holder, place, filter_change_underwater]).toEqual(["flip", "before_window", "flip"]);
  });

  it("keeps its description, or names what the model cannot answer, from bound to bound", () => {
    const counts = { ok: 0, problem: 0 };
    fc.assert(
      fc.property(scenes, (scene) => {
        const answered = answer("filter-mounting", scene);
        counts[answered.status] += 1;
        if (answered.status === "problem") {
          expect(answered.problem.status, JSON.stringify(answered.problem)).toBe(422);
          return;
        }
        const body = JSON.parse(toJson(answered.body));
        expect(validate?.(body), contractAjv.errorsText(validate?.errors)).toBe(true);
      }),
      { numRuns: 1500, seed: 4 },
    );
    expect(counts.ok).toBeGreaterThan(300);
    expect(counts.problem).toBeGreaterThan(100);
  });

  it("gives the same bytes for scenes that mean the same", () => {
    const { scene } = flat_port_and_rings;
    const first = bodyOf(scene);
    const { assumed, ...again } = first.scene;
    expect(assumed).toContain("f_number");
    const stillAssumed = ["entrance_pupil_distance_mm", "filter_clear_diameter_mm"];
    expect(bodyOf(again)).toEqual({ ...first, scene: { ...again, assumed: stillAssumed } });
  });

  it("refuses what its schema and its rules refuse", () => {
    const { scene } = flat_port_and_rings;
    expect(problemOf({ ...scene, dept_m: 3 }).errors).toEqual(["/dept_m unknown_field"]);
    expect(problemOf({ port_kind: "flat", lens_kind: "wide", focal_length_mm: 16 })).toEqual({
      code: "invalid_scene",
      status: 400,
      errors: ["/focal_length_mm lens_field_given"],
    });
    const [first] = scene.rings;
    expect(problemOf({ ...scene, rings: [first, first] }).errors).toEqual(["/rings/1/id ring_ids_unique"]);
    expect(problemOf({ ...scene, expect_model_version: "1999.1.1" }).status).toBe(409);
  });

  it.each([
    ["field_too_wide", "/field_of_view_deg", { lens_kind: "wide", field_of_view_deg: 175 }],
    [
      "corner_outside_image_circle",
      "/focal_length_mm",
      { lens_kind: "fisheye", focal_length_mm: 8, sensor_diagonal_mm: 43.3 },
    ],
    [
      "lens_contradicts",
      "/sensor_diagonal_mm",
      { lens_kind: "wide", focal_length_mm: 16, sensor_diagonal_mm: 20, field_of_view_deg: 107 },
    ],
  ])("says %s where the lens leads outside the model", (code, pointer, lens) => {
    expect(problemOf({ port_kind: "flat", ...lens })).toEqual({
      code: "outside_the_model",
      status: 422,
      errors: [`${pointer} ${code}`],
    });
  });
});

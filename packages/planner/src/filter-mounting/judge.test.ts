// Which holder goes where is common practice, no published source; these guard each obstacle, doubt and merit by its code.
import { describe, expect, it } from "vitest";
import type { FilterHolder, FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { judge } from "./judge.js";
import { lensOf } from "./lens.js";
import { ACTION_CAMERA, COMPACT, FISHEYE, sceneOf, WIDE_ZOOM } from "./mounting-scenes.test-support.js";

const ACTION_IN_DOME: FilterMountingScene = { ...ACTION_CAMERA, port_kind: "dome" };

const of = (scene: FilterMountingScene, holder: FilterHolder) => judge(scene, lensOf(scene), holder);
const faults = (scene: FilterMountingScene, holder: FilterHolder) =>
  of(scene, holder).faults.map(({ code }) => code);
/** Whether what was found against a holder is worked out or the trade's. */
const basisOf = (scene: FilterMountingScene, holder: FilterHolder, code: string) =>
  of(scene, holder).faults.find((fault) => fault.code === code)?.basis;

describe("a holder", () => {
  it.each<[FilterHolder, FilterMountingScene, string, string, string]>([
    ["rear_sheet", WIDE_ZOOM, "behind_lens", "none", "mount_behind_lens"],
    ["screw_on_lens", WIDE_ZOOM, "on_lens", "none", "mount_on_lens"],
    ["screw_on_port", COMPACT, "before_port", "none", "mount_outside_fixed"],
    ["flip", COMPACT, "before_port", "flip", "mount_outside_changed"],
    ["clip_on", COMPACT, "before_port", "clip_on", "mount_outside_changed"],
    ["clip_on", ACTION_CAMERA, "before_window", "clip_on", "mount_outside_changed"],
    ["action_camera", ACTION_CAMERA, "before_window", "none", "mount_over_window"],
    ["action_camera", COMPACT, "before_port", "none", "mount_over_window"],
  ])("%s has its place, what it changes, and its merit", (holder, scene, place, changes, merit) => {
    const judged = of(scene, holder);
    expect([judged.holder, judged.place, judged.changes]).toEqual([holder, place, changes]);
    expect([judged.merit.code, judged.merit.basis]).toEqual([merit, "common_practice"]);
  });

  it("for an action camera goes on one", () => {
    expect(of(ACTION_CAMERA, "action_camera").verdict).not.toBe("does_not_fit");
    expect(faults(ACTION_CAMERA, "action_camera")).not.toContain("mount_not_an_action_camera");
  });

  it.each<[string, FilterHolder, FilterMountingScene, string]>([
    ["a lens that stays on", "rear_sheet", COMPACT, "mount_lens_stays_on"],
    [
      "a watertight camera",
      "rear_sheet",
      { ...ACTION_CAMERA, lens_interchangeable: true },
      "mount_lens_stays_on",
    ],
    [
      "another camera",
      "action_camera",
      sceneOf({ port_kind: "flat" }, "dome_radius_mm"),
      "mount_not_an_action_camera",
    ],
    ["a larger fixed lens", "action_camera", COMPACT, "mount_not_an_action_camera"],
    ["a dome", "action_camera", ACTION_IN_DOME, "mount_not_before_dome"],
    [
      "a watertight camera",
      "screw_on_lens",
      { ...ACTION_CAMERA, lens_thread_mm: 52 },
      "mount_window_is_port",
    ],
    ["a lens without a thread", "screw_on_lens", COMPACT, "mount_lens_without_thread"],
    ["a fisheye without a thread", "screw_on_lens", FISHEYE, "mount_front_bulges"],
    [
      "a field beyond 170 degrees",
      "screw_on_lens",
      { ...FISHEYE, lens_thread_mm: 77 },
      "mount_field_too_wide",
    ],
    ["a dome", "screw_on_port", { ...WIDE_ZOOM, port_thread_mm: 100 }, "mount_not_before_dome"],
    ["a dome", "flip", WIDE_ZOOM, "mount_not_before_dome"],
    ["a dome", "clip_on", WIDE_ZOOM, "mount_not_before_dome"],
    ["a port without a thread", "screw_on_port", sceneOf({ port_kind: "flat" }), "mount_port_without_thread"],
  ])("cannot go with %s: %s", (_what, holder, scene, code) => {
    const judged = of(scene, holder);
    expect(judged.verdict).toBe("does_not_fit");
    // What the trade knows is told as such; an angle is worked out.
    const basis = code === "mount_field_too_wide" ? "computed" : "common_practice";
    expect(judged.faults.map((fault) => [fault.code, fault.basis])).toEqual([[code, basis]]);
    expect(judged).not.toHaveProperty("front");
    expect(judged).not.toHaveProperty("sheet");
  });

  it("goes on the lens up to 170 degrees, and says of a wider field how wide it is", () => {
    const wide = (field_of_view_deg: number) =>
      of({ ...FISHEYE, lens_thread_mm: 77, field_of_view_deg }, "screw_on_lens");
    expect(wide(170).faults.map(({ code }) => code)).not.toContain("mount_field_too_wide");
    expect(wide(171).faults[0].parameters).toEqual({ field_deg: 171 });
  });
});

describe("a doubt", () => {
  it("is the room behind a dome of unknown radius, for what screws on the lens alone", () => {
    expect(faults(sceneOf({}, "dome_radius_mm"), "screw_on_lens")).toContain("mount_dome_room_unknown");
    expect(faults(WIDE_ZOOM, "screw_on_lens")).toEqual(["corners_close"]);
    const flat = sceneOf({ port_kind: "flat" }, "dome_radius_mm");
    expect(faults(flat, "screw_on_lens")).not.toContain("mount_dome_room_unknown");
    const unknown = sceneOf({}, "dome_radius_mm");
    expect(basisOf(unknown, "screw_on_lens", "mount_dome_room_unknown")).toBe("common_practice");
  });

  it("is what a flip holder seats on, where the flat port has no thread that is known", () => {
    const { port_thread_mm: _, ...without } = COMPACT;
    expect(faults(without, "flip")).toEqual(["mount_flip_seat_unknown"]);
    expect(basisOf(without, "flip", "mount_flip_seat_unknown")).toBe("common_practice");
    expect(faults(COMPACT, "flip")).toEqual([]);
    expect(faults(without, "clip_on")).toEqual(["mount_clip_seat_unknown"]);
    expect(faults(ACTION_CAMERA, "flip")).not.toContain("mount_flip_seat_unknown");
  });

  it("is where focus ends behind a sheet, unknown or lost, and not where depth of field hides it", () => {
    const thick = { sheet_thickness_mm: 1, f_number: 2.8 };
    expect(faults(sceneOf(thick, "dome_radius_mm"), "rear_sheet")).toEqual(["sheet_focus_unknown"]);
    expect(basisOf(sceneOf(thick, "dome_radius_mm"), "rear_sheet", "sheet_focus_unknown")).toBe("computed");
    const flat = sceneOf({ ...thick, port_kind: "flat" }, "dome_radius_mm");
    expect(faults(flat, "rear_sheet")).toEqual(["sheet_infinity_lost"]);
    expect(faults(sceneOf({ port_kind: "flat" }, "dome_radius_mm"), "rear_sheet")).toEqual([]);
    expect(faults(WIDE_ZOOM, "rear_sheet")).toEqual([]);
  });

  it("is a change under water that it does not allow, or allows in another way", () => {
    const change = (filter_change_underwater: "none" | "flip" | "clip_on") => ({
      ...COMPACT,
      filter_change_underwater,
    });
    expect(faults(change("none"), "flip")).toEqual([]);
    expect(faults(change("flip"), "flip")).toEqual([]);
    expect(faults(change("flip"), "screw_on_port")).toEqual(["mount_fixed_for_dive"]);
    expect(faults({ ...WIDE_ZOOM, filter_change_underwater: "flip" }, "rear_sheet")).toEqual([
      "mount_fixed_for_dive",
    ]);
    const other = of(change("flip"), "clip_on").faults[1];
    expect([other.code, other.parameters]).toEqual(["mount_other_change", { allowed: "clip_on" }]);
    expect(other.basis).toBe("common_practice");
    expect(basisOf(change("flip"), "screw_on_port", "mount_fixed_for_dive")).toBe("common_practice");
    expect(of(change("clip_on"), "flip").faults[0].parameters).toEqual({ allowed: "flip" });
    expect(of(change("clip_on"), "flip").verdict).toBe("fits_with_care");
  });
});

describe("what is screwed on", () => {
  const ring = (id: string, from_mm: number, to_mm: number, thickness_mm: number) => ({
    id,
    from_mm,
    to_mm,
    thickness_mm,
  });

  it("has rings from the thread of the lens or the port, and from no frame or clip", () => {
    const rings = [ring("a", 67, 77, 2)];
    const onLens = of(sceneOf({ focal_length_mm: 24, lens_thread_mm: 67, rings }), "screw_on_lens");
    expect(onLens.rings?.chain).toMatchObject({ closes: true, from_mm: 67, to_mm: 77 });
    const onPort = { ...COMPACT, filter_thread_mm: 77, rings };
    for (const holder of ["screw_on_port", "flip"] as const) {
      expect(of(onPort, holder).rings?.chain.rings).toEqual(rings);
    }
    expect(of(onPort, "clip_on")).not.toHaveProperty("rings");
    expect(of(ACTION_CAMERA, "action_camera")).not.toHaveProperty("rings");
  });

  it("is the first of the ways that is best: the chain of fewest rings unless a thinner one does better", () => {
    const thin = [ring("a", 67, 72, 2), ring("b", 72, 77, 2)];
    const scene = (tower_mm: number) =>
      sceneOf({ focal_length_mm: 24, lens_thread_mm: 67, rings: [ring("tower", 67, 77, tower_mm), ...thin] });
    const chained = (tower_mm: number) =>
      of(scene(tower_mm), "screw_on_lens").rings?.chain.rings.map(({ id }) => id);
    expect(chained(4)).toEqual(["tower"]);
    expect(chained(40)).toEqual(["a", "b"]);
  });
});

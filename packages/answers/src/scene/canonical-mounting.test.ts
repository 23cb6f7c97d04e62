import { type MountingScene, mountingExamples } from "@sunfathom/contract";
import { describe, expect, it } from "vitest";
import { canonicalMounting } from "./canonical-mounting.js";

const text = (scene: MountingScene) => JSON.stringify(canonicalMounting(scene));

describe("the one form of a mounting scene", () => {
  it("has every default filled in and named", () => {
    expect(canonicalMounting({ port_kind: "flat", lens_kind: "wide", field_of_view_deg: 90 })).toEqual({
      scene: {
        port_kind: "flat",
        lens_kind: "wide",
        field_of_view_deg: 90,
        f_number: 8,
        lens_interchangeable: true,
        wet_lens: "none",
        zoom_travel_mm: 0,
        filter_thickness_mm: 5,
        filter_material: "glass",
        filter_change_underwater: "none",
        rear_fixing: "slot",
        sheet_thickness_mm: 0.1,
        sheet_refractive_index: 1.5,
        rings: [],
      },
      assumed: [
        "f_number",
        "lens_interchangeable",
        "wet_lens",
        "zoom_travel_mm",
        "filter_thickness_mm",
        "filter_material",
        "filter_change_underwater",
        "rear_fixing",
        "sheet_thickness_mm",
        "sheet_refractive_index",
        "sensor_diagonal_mm",
        "entrance_pupil_distance_mm",
      ],
    });
  });

  it("names what a filter in a thread is taken to be", () => {
    const scene: MountingScene = {
      port_kind: "flat",
      lens_kind: "wide",
      field_of_view_deg: 90,
      lens_thread_mm: 52,
    };
    expect(canonicalMounting(scene).assumed.slice(-2)).toEqual([
      "filter_thread_mm",
      "filter_clear_diameter_mm",
    ]);
    const known = { ...scene, filter_thread_mm: 67, filter_clear_diameter_mm: 63 };
    expect(canonicalMounting(known).assumed.filter((name) => name.startsWith("filter_"))).toEqual([
      "filter_thickness_mm",
      "filter_material",
      "filter_change_underwater",
    ]);
  });

  it("does not depend on the order of the fields, nor on what says nothing", () => {
    const base: MountingScene = { port_kind: "flat", lens_kind: "wide", field_of_view_deg: 90 };
    expect(text({ field_of_view_deg: 90, lens_kind: "wide", port_kind: "flat" })).toBe(text(base));
    expect(text({ ...base, rings: [], expect_model_version: "x" })).toBe(text(base));
    const ring = { id: "a", from_mm: 52, to_mm: 67, thickness_mm: 3 };
    const turned = { thickness_mm: 3, to_mm: 67, from_mm: 52, id: "a" };
    expect(text({ ...base, rings: [turned] })).toBe(text({ ...base, rings: [ring] }));
  });

  it("keeps a no that was said", () => {
    const scene: MountingScene = { port_kind: "flat", lens_kind: "wide", lens_interchangeable: false };
    const { scene: own, assumed } = canonicalMounting(scene);
    expect(own.lens_interchangeable).toBe(false);
    expect(assumed).not.toContain("lens_interchangeable");
  });

  it.each(Object.entries(mountingExamples))("sent again, %s stays as it is", (_, { scene }) => {
    const first = canonicalMounting(scene);
    const again = canonicalMounting(first.scene);
    expect(JSON.stringify(again.scene)).toBe(JSON.stringify(first.scene));
    // What the answer takes fields to be that are still left out is still assumed.
    expect(again.assumed).toEqual(first.assumed.filter((name) => !(name in first.scene)));
  });
});

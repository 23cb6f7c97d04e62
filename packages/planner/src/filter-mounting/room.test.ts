// What a wet lens takes from the port is common practice, no published source; room is what is left when lengths are taken off.
import { describe, expect, it } from "vitest";
import type { FilterHolder, FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { filterMounting } from "./filter-mounting.js";
import { COMPACT, sceneOf, WIDE_ZOOM } from "./mounting-scenes.test-support.js";

/** A lens of 28 mm before half a frame, in a housing with a flat port. */
const BEHIND_FLAT = sceneOf(
  {
    port_kind: "flat",
    lens_kind: "standard",
    focal_length_mm: 28,
    sensor_diagonal_mm: 28.4,
    holder: "screw_on_lens",
  },
  "dome_radius_mm",
);
const verdictOf = (scene: FilterMountingScene, holder: FilterHolder) =>
  filterMounting(scene).options.find((option) => option.holder === holder);

describe("room before the port", () => {
  it.each([
    [{ lens_port_gap_mm: 20 }, 15, "fits", "mount_on_lens"],
    [{ lens_port_gap_mm: 20, zoom_travel_mm: 13 }, 2, "fits_with_care", "mount_near_port"],
    [{ lens_port_gap_mm: 20, zoom_travel_mm: 15 }, 0, "does_not_fit", "mount_hits_port"],
    [{ lens_port_gap_mm: 4 }, -1, "does_not_fit", "mount_hits_port"],
  ] as const)("is the gap less travel and filter: %o leaves %d mm", (changes, left_mm, verdict, code) => {
    const scene = { ...BEHIND_FLAT, ...changes };
    expect(verdictOf(scene, "screw_on_lens")).toMatchObject({ verdict, code });
    const { holder, port_clearance_mm } = filterMounting(scene);
    if (holder === "screw_on_lens") expect(port_clearance_mm).toBeCloseTo(left_mm, 9);
  });

  it("is less by the rings", () => {
    const rings = [{ id: "a", from_mm: 77, to_mm: 82, thickness_mm: 2.5 }];
    const scene = { ...BEHIND_FLAT, filter_thread_mm: 82, rings, lens_port_gap_mm: 20 };
    expect(filterMounting(scene).port_clearance_mm).toBeCloseTo(12.5, 9);
  });

  it("is in doubt where a zoom grows and nobody measured, and no matter where it does not", () => {
    const unknown = verdictOf({ ...BEHIND_FLAT, zoom_travel_mm: 10 }, "screw_on_lens");
    expect(unknown).toMatchObject({ verdict: "fits_with_care", code: "mount_zoom_room_unknown" });
    expect(verdictOf(BEHIND_FLAT, "screw_on_lens")?.verdict).toBe("fits");
  });

  it("behind a dome is less by the travel too", () => {
    const scene = sceneOf({ holder: "screw_on_lens", focal_length_mm: 24 });
    const [near, far] = [60, 0].map(
      (zoom_travel_mm) => filterMounting({ ...scene, zoom_travel_mm }).dome_clearance_mm,
    );
    expect(far?.likely).toBeGreaterThan(near?.likely ?? 0);
    expect(verdictOf({ ...scene, zoom_travel_mm: 90 }, "screw_on_lens")).toMatchObject({
      verdict: "does_not_fit",
      code: "mount_hits_dome",
    });
  });
});

describe("a wet lens", () => {
  const wet = { ...COMPACT, wet_lens: "wide" } as const;

  it("takes the place of what goes over the port, and is moved by what screws into it", () => {
    for (const holder of ["flip", "clip_on"] as const) {
      expect(verdictOf(wet, holder)).toMatchObject({
        verdict: "does_not_fit",
        code: "mount_wet_lens_in_the_way",
      });
      expect(verdictOf(COMPACT, holder)?.verdict).not.toBe("does_not_fit");
    }
    expect(verdictOf(wet, "screw_on_port")).toMatchObject({
      verdict: "fits_with_care",
      code: "mount_wet_lens_stacked",
      parameters: { wet_lens: "wide", thickness_mm: 5 },
    });
  });

  it("is no matter to what is inside the housing", () => {
    for (const holder of ["screw_on_lens", "rear_sheet"] as const) {
      expect(verdictOf({ ...BEHIND_FLAT, wet_lens: "wide" }, holder)).toEqual(verdictOf(BEHIND_FLAT, holder));
    }
  });

  it("is told not to belong on a dome", () => {
    const codes = (scene: FilterMountingScene) => filterMounting(scene).reasons.map(({ code }) => code);
    expect(codes({ ...WIDE_ZOOM, focal_length_mm: 24, wet_lens: "wide" })).toContain("wet_lens_not_on_dome");
    expect(codes({ ...WIDE_ZOOM, focal_length_mm: 24 })).not.toContain("wet_lens_not_on_dome");
    expect(codes(wet)).not.toContain("wet_lens_not_on_dome");
  });
});

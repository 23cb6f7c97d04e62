import { describe, expect, it } from "vitest";
import { filterMounting } from "./filter-mounting.js";
import { COMPACT, sceneOf } from "./mounting-scenes.test-support.js";

const RADIAN = Math.PI / 180;

describe("corners behind a filter", () => {
  it("follow r = p + s tan w on the lens, worked by hand", () => {
    // 24 mm at f/8: p = 1.5; corner atan(21.65 / 24) = 42.05 degrees; filter 77: r = 37, at 30 + 5 mm.
    const { vignetting, clear_diameter_needed_mm } = filterMounting(
      sceneOf({ focal_length_mm: 24, lens_thread_mm: 77, entrance_pupil_distance_mm: 30 }),
    );
    expect(vignetting!.corner_half_field_deg).toBeCloseTo(42.05, 2);
    expect(vignetting!.clear_half_field_deg.likely).toBeCloseTo(Math.atan(35.5 / 35) / RADIAN, 8);
    expect(vignetting!.corner_light_percent.likely).toBe(100);
    expect(vignetting!.pupil_distance_mm).toEqual({ low: 27, likely: 30, high: 33 });
    expect(vignetting!.pupil_distance_assumed).toBe(false);
    expect(clear_diameter_needed_mm!.likely).toBeCloseTo(2 * (1.5 + (35 * 21.65) / 24), 8);
  });

  it("are clear, by the assumed place of the pupil, for one ordinary filter of 5 mm in the thread of lenses as they are sold", () => {
    // Focal length and thread of wide and standard lenses for 24 x 36 mm, from memory; that they take one filter is common practice.
    for (const [focal_length_mm, lens_thread_mm] of [
      [16, 77],
      [16, 82],
      [20, 72],
      [24, 67],
      [28, 52],
      [35, 49],
    ] as const) {
      const { vignetting } = filterMounting(
        sceneOf({
          focal_length_mm,
          lens_thread_mm,
          filter_thread_mm: lens_thread_mm,
          holder: "screw_on_lens",
        }),
      );
      expect(vignetting!.grade, `${focal_length_mm} mm`).toBe("clear");
    }
  });

  it("lose less through filters in water in front of a flat port than the same distance in air would cost", () => {
    const place = { entrance_pupil_distance_mm: 12, filter_clear_diameter_mm: 45, filter_thickness_mm: 8 };
    const { clear_diameter_needed_mm } = filterMounting({ ...COMPACT, ...place, holder: "clip_on" });
    // 15 mm of port and gap are assumed on top of 12; the corner is at tan w = 7.95 / 8.8, in water at asin(sin w / 1.34).
    const tangent = 7.95 / 8.8;
    const inWater = Math.tan(Math.asin(Math.sin(Math.atan(tangent)) / 1.34));
    const pupil = 8.8 / 16;
    expect(clear_diameter_needed_mm!.likely).toBeCloseTo(2 * (pupil + 27 * tangent + 8 * inWater), 8);
  });

  it("show as a loss in stops only where some light is certain", () => {
    const tight = filterMounting(
      sceneOf({ entrance_pupil_distance_mm: 25, f_number: 8, holder: "screw_on_lens", filter_thread_mm: 77 }),
    );
    expect(tight.vignetting!.grade).toBe("black");
    expect(tight.vignetting!.corner_loss_stops).toBeUndefined();
    const open = filterMounting(
      sceneOf({
        focal_length_mm: 35,
        lens_thread_mm: 58,
        filter_thread_mm: 58,
        f_number: 1.4,
        holder: "screw_on_lens",
        entrance_pupil_distance_mm: 30,
      }),
    );
    const { corner_light_percent, corner_loss_stops } = open.vignetting!;
    expect(corner_loss_stops!.likely).toBeCloseTo(-Math.log2(corner_light_percent.likely / 100), 10);
    expect(corner_loss_stops!.high).toBeGreaterThan(corner_loss_stops!.likely);
  });

  it("name the one cause of their spread", () => {
    const { uncertainty } = filterMounting(COMPACT);
    expect(uncertainty.map(({ cause, share }) => [cause, share])).toEqual([["pupil_distance", 1]]);
  });
});

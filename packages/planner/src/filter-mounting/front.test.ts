import { describe, expect, it } from "vitest";
import { filterMounting } from "./filter-mounting.js";
import { frontOf } from "./front.js";
import { lensOf } from "./lens.js";
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
      sceneOf({
        entrance_pupil_distance_mm: 24,
        dome_radius_mm: 200,
        lens_interchangeable: false,
        f_number: 8,
        holder: "screw_on_lens",
        filter_thread_mm: 77,
      }),
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
    expect(uncertainty.map(({ code, share }) => [code, share])).toEqual([["pupil_distance", 1]]);
  });
});

describe("rings and filter as openings", () => {
  const scene = sceneOf({ focal_length_mm: 24, entrance_pupil_distance_mm: 30, f_number: 8 });
  const rings = [
    { id: "a", from_mm: 67, to_mm: 72, thickness_mm: 2 },
    { id: "b", from_mm: 72, to_mm: 77, thickness_mm: 3 },
  ];
  /** Rims take 3 mm of a thread's diameter (common practice); the pupil's radius is 24 / 16. */
  const clear_deg = (openings: [thread_mm: number, forward_mm: number][], seat_mm = 30) =>
    Math.min(
      ...openings.map(([thread_mm, forward]) => Math.atan(((thread_mm - 3) / 2 - 1.5) / (seat_mm + forward))),
    ) / RADIAN;

  it("each ring is as wide as its threads at both of its ends, and the filter lies on the last", () => {
    const front = frontOf(scene, lensOf(scene), { place: "on_lens", seat_mm: 67, mounted: rings });
    const openings: [number, number][] = [
      [67, 0],
      [72, 2],
      [72, 2],
      [77, 5],
      [77, 10],
    ];
    expect(front.vignetting?.clear_half_field_deg.likely).toBeCloseTo(clear_deg(openings), 8);
    expect(front.clear_diameter_needed_mm.likely).toBeCloseTo(2 * (1.5 + (40 * 21.65) / 24), 8);
    // Nearer to the thread the pupil sees more, farther less.
    expect(front.vignetting?.clear_half_field_deg.low).toBeCloseTo(clear_deg(openings, 33), 8);
    expect(front.vignetting?.clear_half_field_deg.high).toBeCloseTo(clear_deg(openings, 27), 8);
    const narrow = { id: "narrow", from_mm: 52, to_mm: 77, thickness_mm: 1 };
    const seated = frontOf(scene, lensOf(scene), { place: "on_lens", seat_mm: 52, mounted: [narrow] });
    expect(seated.vignetting?.clear_half_field_deg.likely).toBeCloseTo(clear_deg([[52, 0]]), 8);
    const narrowed = frontOf(scene, lensOf(scene), {
      place: "on_lens",
      seat_mm: 67,
      mounted: [{ id: "up", from_mm: 67, to_mm: 58, thickness_mm: 9 }],
    });
    expect(narrowed.vignetting?.clear_half_field_deg.likely).toBeCloseTo(clear_deg([[58, 9]]), 8);
  });

  it("a filter is as wide as it is said to be, or as its thread, or as that of its seat", () => {
    const of = (changes: Parameters<typeof sceneOf>[0], seat_mm: number | undefined) => {
      const changed = { ...scene, ...changes };
      return frontOf(changed, lensOf(changed), { place: "on_lens", seat_mm: seat_mm, mounted: [] }).vignetting
        ?.clear_half_field_deg.likely;
    };
    expect(of({ filter_clear_diameter_mm: 60 }, 82)).toBeCloseTo(clear_deg([[63, 5]]), 8);
    expect(of({ filter_thread_mm: 77 }, 82)).toBeCloseTo(clear_deg([[77, 5]]), 8);
    const { filter_thread_mm: _, ...without } = scene;
    const seated = frontOf(without, lensOf(without), {
      place: "on_lens",
      seat_mm: 82,
      mounted: [],
    }).vignetting;
    expect(seated?.clear_half_field_deg.likely).toBeCloseTo(clear_deg([[82, 5]]), 8);
    expect(
      frontOf(without, lensOf(without), { place: "on_lens", seat_mm: undefined, mounted: [] }),
    ).not.toHaveProperty("vignetting");
  });

  it("are graded by the loss in the corner: a tenth of a stop is clear, half a stop slight (judgements)", () => {
    const met = new Set<string>();
    for (let pupil_mm = 20; pupil_mm < 60; pupil_mm += 0.25) {
      const changed = { ...scene, entrance_pupil_distance_mm: pupil_mm, f_number: 2.8 };
      const { vignetting } = frontOf(changed, lensOf(changed), {
        place: "on_lens",
        seat_mm: 77,
        mounted: [],
      });
      const share = (vignetting?.corner_light_percent.likely ?? Number.NaN) / 100;
      const stops = -Math.log2(share);
      const grade = share === 0 ? "black" : stops < 0.1 ? "clear" : stops < 0.5 ? "slight" : "dark";
      expect(vignetting?.grade).toBe(grade);
      met.add(grade);
    }
    expect([...met]).toEqual(["clear", "slight", "dark", "black"]);
  });
});

describe("room behind a dome", () => {
  const scene = sceneOf({ entrance_pupil_distance_mm: 30, dome_radius_mm: 80 });
  const room = (changes: Parameters<typeof sceneOf>[0], mounted: Parameters<typeof frontOf>[2]["mounted"]) =>
    frontOf({ ...scene, ...changes }, lensOf(scene), { place: "on_lens", seat_mm: 77, mounted: mounted })
      .dome_clearance_mm;

  it("is from the rim that comes nearest: the filter's, or a ring's, each 3 mm wider than its thread", () => {
    expect(room({}, [])?.likely).toBeCloseTo(80 - Math.hypot(35, 40), 9);
    expect(room({}, [])?.low).toBeCloseTo(80 - Math.hypot(38, 40), 9);
    expect(room({}, [])?.high).toBeCloseTo(80 - Math.hypot(32, 40), 9);
    const wide = { id: "wide", from_mm: 77, to_mm: 105, thickness_mm: 2 };
    const back = { id: "back", from_mm: 105, to_mm: 77, thickness_mm: 3 };
    expect(room({}, [wide])?.likely).toBeCloseTo(80 - Math.hypot(32, 54), 9);
    expect(room({}, [wide, back])?.likely).toBeCloseTo(80 - Math.hypot(35, 54), 9);
    const thin = { id: "thin", from_mm: 77, to_mm: 77, thickness_mm: 4 };
    expect(room({}, [thin])?.likely).toBeCloseTo(80 - Math.hypot(39, 40), 9);
  });

  it("is told of what stands on the lens behind a dome of known radius alone", () => {
    const lens = lensOf(scene);
    expect(frontOf(scene, lens, { place: "before_port", seat_mm: 77, mounted: [] })).not.toHaveProperty(
      "dome_clearance_mm",
    );
    const { dome_radius_mm: _, ...unknown } = scene;
    expect(frontOf(unknown, lens, { place: "on_lens", seat_mm: 77, mounted: [] })).not.toHaveProperty(
      "dome_clearance_mm",
    );
    const { filter_thread_mm: __, ...unthreaded } = scene;
    expect(
      frontOf(unthreaded, lens, { place: "on_lens", seat_mm: undefined, mounted: [] }),
    ).not.toHaveProperty("dome_clearance_mm");
  });
});

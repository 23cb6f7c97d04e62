import { type Scene, sceneExamples } from "@sunfathom/contract";
import { describe, expect, it } from "vitest";
import { canonicalScene } from "./canonical.js";

const text = (scene: Scene) => JSON.stringify(canonicalScene(scene));

describe("the one form of a scene", () => {
  it("has every default filled in and named", () => {
    expect(canonicalScene({ water_type: "IB", depth_m: 12 })).toEqual({
      scene: {
        water_type: "IB",
        daylight_basis: "sun",
        sun_elevation_deg: 45,
        cloud_oktas: 0,
        wind_speed_m_s: 4,
        min_depth_m: 12,
        max_depth_m: 12,
        subject_distance_m: 1,
        subject_facing: "camera",
        sun_side: "behind_camera",
        camera_tilt_deg: 0,
        bottom: "coral",
        bottom_depth_m: 15,
        camera_class: "compact",
        min_iso: 100,
        max_iso: 6400,
        min_f_number: 2.8,
        max_f_number: 16,
        shutter_s: 0.02,
        bits: 8,
        recording_curve: "rec709",
        finish: "in_camera",
        exposure_mode: "manual",
        white_balance_mode: "card",
        white_balance_min_cct_K: 2500,
        white_balance_max_cct_K: 10000,
        white_balance_max_duv: 0.03,
        filter_change_underwater: "none",
        lamps: [],
      },
      assumed: [
        "daylight_basis",
        "sun_elevation_deg",
        "cloud_oktas",
        "wind_speed_m_s",
        "subject_distance_m",
        "subject_facing",
        "sun_side",
        "camera_tilt_deg",
        "bottom",
        "bottom_depth_m",
        "camera_class",
        "min_iso",
        "max_iso",
        "min_f_number",
        "max_f_number",
        "shutter_s",
        "bits",
        "recording_curve",
        "finish",
        "exposure_mode",
        "white_balance_mode",
        "white_balance_min_cct_K",
        "white_balance_max_cct_K",
        "white_balance_max_duv",
        "filter_change_underwater",
      ],
    });
  });

  it("takes a camera's limits from its class where they are not given, and names them among what is assumed", () => {
    const phone = canonicalScene({ water_type: "IB", depth_m: 12, camera_class: "phone", min_f_number: 1.6 });
    expect(phone.scene).toMatchObject({
      camera_class: "phone",
      min_f_number: 1.6,
      max_f_number: 1.8,
      white_balance_max_cct_K: 8000,
      white_balance_max_duv: 0.02,
    });
    expect(phone.assumed).toEqual(expect.arrayContaining(["max_f_number", "white_balance_max_duv"]));
    expect(phone.assumed).not.toContain("min_f_number");
    expect(phone.assumed).not.toContain("camera_class");
  });

  it("assumes no named recording curve beside points of its own", () => {
    const recording_curve_points = [
      { light_share: 0, code_share: 0.06 },
      { light_share: 1, code_share: 1 },
    ];
    const { scene, assumed } = canonicalScene({ water_type: "IB", depth_m: 12, recording_curve_points });
    expect(scene).toMatchObject({ recording_curve_points });
    expect(scene).not.toHaveProperty("recording_curve");
    expect(assumed).not.toContain("recording_curve");
  });

  it("does not depend on the order of the fields, nor on how the same is said", () => {
    const pairs: [Scene, Scene][] = [
      [
        { depth_m: 12, water_type: "IB" },
        { water_type: "IB", min_depth_m: 12, max_depth_m: 12 },
      ],
      [
        { water_type: "IB", depth_m: 12, cloud_oktas: -0 },
        { water_type: "IB", depth_m: 12, cloud_oktas: 0 },
      ],
      [
        { water_type: "IB", depth_m: 12, shutter_s: 0.02, frame_rate_fps: 25 },
        { water_type: "IB", depth_m: 12, frame_rate_fps: 25, shutter_angle_deg: 180 },
      ],
      [
        { water_type: "IB", depth_m: 12, lamps: [{ distance_m: 0.8, flux_lm: 4000, led: "LED-B4" }] },
        { water_type: "IB", depth_m: 12, lamp_flux_lm: 4000, lamp_distance_m: 0.8, lamp_led: "LED-B4" },
      ],
      [
        { water_type: "IB", depth_m: 12, lamps: [] },
        { water_type: "IB", depth_m: 12, expect_model_version: "x" },
      ],
      [
        { depth_m: 12, kd_samples: [{ kd_per_m: 0.1, wavelength_nm: 400 }] },
        { depth_m: 12, kd_samples: [{ wavelength_nm: 400, kd_per_m: 0.1 }] },
      ],
    ];
    for (const [one, other] of pairs) expect(text(one)).toBe(text(other));
  });

  it.each(Object.entries(sceneExamples))("sent again, %s stays as it is", (_, { scene }) => {
    const first = canonicalScene(scene);
    const again = canonicalScene(first.scene as Scene);
    expect(JSON.stringify(again.scene)).toBe(JSON.stringify(first.scene));
    expect(again.assumed).toEqual([]);
  });

  it("has no sun where there is no daylight", () => {
    const { scene, assumed } = canonicalScene({ water_type: "IB", depth_m: 12, daylight_basis: "none" });
    expect(scene).not.toHaveProperty("sun_elevation_deg");
    expect(assumed).not.toContain("sun_elevation_deg");
  });

  it("has the sea floor 3 m below the deepest subject unless told (common practice), and no depth of it in deep water", () => {
    const base: Scene = { water_type: "IB", min_depth_m: 4, max_depth_m: 11.2 };
    expect(canonicalScene(base).scene).toMatchObject({ bottom: "coral", bottom_depth_m: 14.2 });
    const deep = canonicalScene({ ...base, bottom: "none" });
    expect(deep.scene).not.toHaveProperty("bottom_depth_m");
    expect(deep.assumed).not.toContain("bottom_depth_m");
    const bottom_reflectance = [
      { reflectance: 0.2, wavelength_nm: 450 },
      { wavelength_nm: 650, reflectance: 0.3 },
    ];
    const measured = canonicalScene({ ...base, bottom_reflectance, bottom_depth_m: 12 });
    expect(measured.scene).not.toHaveProperty("bottom");
    expect(measured.scene.bottom_depth_m).toBe(12);
    expect(JSON.stringify(measured.scene.bottom_reflectance?.[0])).toBe(
      '{"wavelength_nm":450,"reflectance":0.2}',
    );
  });

  it("has a heading in place of the side that the sun stands on", () => {
    const noon = { latitude_deg: -47.3, longitude_deg: -128.4, time: "2026-03-10T20:15:00Z" };
    const { scene, assumed } = canonicalScene({
      water_type: "IB",
      depth_m: 12,
      ...noon,
      camera_heading_deg: 90,
    });
    expect(scene.camera_heading_deg).toBe(90);
    expect(scene).not.toHaveProperty("sun_side");
    expect(assumed).not.toContain("sun_side");
  });

  it("names the half of the exposure time that was assumed", () => {
    const base: Scene = { water_type: "IB", depth_m: 12 };
    const at24 = canonicalScene({ ...base, frame_rate_fps: 24 });
    expect(at24.scene).toMatchObject({ shutter_s: 0.02083333, frame_rate_fps: 24 });
    expect(at24.assumed).toContain("shutter_angle_deg");
    const wide = canonicalScene({ ...base, shutter_angle_deg: 360 });
    expect(wide.scene).toMatchObject({ shutter_s: 0.04, frame_rate_fps: 25 });
    expect(wide.assumed).toContain("frame_rate_fps");
  });

  it("names what was assumed of a lamp, and no colour temperature beside an LED", () => {
    const { scene, assumed } = canonicalScene({
      water_type: "IB",
      depth_m: 12,
      lamps: [
        { flux_lm: 4000, distance_m: 0.8, count: 2 },
        { flux_lm: 500, distance_m: 0.5, led: "LED-B4" },
      ],
    });
    expect(assumed.filter((name) => name.startsWith("lamps/"))).toEqual([
      "lamps/0/beam_angle_deg",
      "lamps/0/beam_angle_medium",
      "lamps/0/cct_K",
      "lamps/1/count",
      "lamps/1/beam_angle_deg",
      "lamps/1/beam_angle_medium",
    ]);
    expect(scene.lamps[0]).toEqual({
      flux_lm: 4000,
      count: 2,
      beam_angle_deg: 100,
      beam_angle_medium: "water",
      cct_K: 5600,
      distance_m: 0.8,
    });
    expect(scene.lamps[1]).not.toHaveProperty("cct_K");
  });
});

describe("filters by stops", () => {
  it("are those of the density: 2 stops are 0.602 (log10 4), on the lens and in the kit, to the byte", () => {
    const base = { water_type: "IB", depth_m: 12 } as const;
    expect(text({ ...base, filter_kind: "red", filter_stops: 2 })).toBe(
      text({ ...base, filter_kind: "red", filter_density: 0.602 }),
    );
    const kit = (strength: object) => [
      { id: "a", item: "lens_filter" as const, filter_kind: "red" as const, ...strength },
    ];
    expect(text({ ...base, kit: kit({ filter_stops: 1 }) })).toBe(
      text({ ...base, kit: kit({ filter_density: 0.301 }) }),
    );
  });
});

describe("filters by pictures of a grey card", () => {
  const base = { water_type: "IB", depth_m: 12 } as const;
  const grey = { red_without: 0.4, green_without: 0.5, blue_without: 0.45 };
  /** Two stops from green, 0.1 from red and blue: about a magenta of 1.1, by the test of the fit. */
  const magenta = { ...grey, red_with: 0.37, green_with: 0.125, blue_with: 0.33 };
  const fitsOf = (scene: Scene) =>
    (canonicalScene(scene).scene as unknown as { filter_fits?: Record<string, unknown>[] }).filter_fits;

  it("are resolved to kind and density, and say how sure that is and what the curve is", () => {
    const scene = { ...base, filter_samples: [magenta] };
    const { filter_kind, filter_density } = canonicalScene(scene).scene;
    expect(filter_kind).toBe("magenta");
    expect(canonicalScene(scene).scene).not.toHaveProperty("filter_samples");
    const [fit] = fitsOf(scene) ?? [];
    expect(fit).toMatchObject({ filter_kind, filter_density, matches: [] });
    expect(fit?.["filter_transmittance"]).toHaveLength(16);
    expect(fit?.["density_standard_error"]).toBeGreaterThan(0);
  });

  it("of a kit are compared: a sheet that takes half a stop more of green differs from the glass by that", () => {
    const sheet = { ...magenta, green_with: 0.125 * Math.SQRT1_2 };
    const kit = [
      { id: "glass", item: "lens_filter" as const, filter_samples: [magenta] },
      { id: "sheet", item: "lens_filter" as const, filter_samples: [sheet] },
    ];
    const [glass] = fitsOf({ ...base, kit }) ?? [];
    expect(glass).toMatchObject({ id: "glass" });
    expect(glass?.["matches"]).toEqual([{ id: "sheet", differ_stops: expect.closeTo(0.5, 9) }]);
  });
});

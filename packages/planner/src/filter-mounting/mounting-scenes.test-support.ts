/** Scenes to mount filters in. Tests only. */
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";

/** A wide zoom for 24 x 36 mm behind a dome, at its widest, and one filter in its own thread. */
export const WIDE_ZOOM: FilterMountingScene = {
  port_kind: "dome",
  dome_radius_mm: 110,
  lens_kind: "wide",
  focal_length_mm: 16,
  sensor_diagonal_mm: 43.3,
  f_number: 8,
  lens_interchangeable: true,
  lens_thread_mm: 77,
  filter_thread_mm: 77,
  filter_thickness_mm: 5,
  filter_material: "glass",
  wet_lens: "none",
  zoom_travel_mm: 0,
  rings: [],
  rear_fixing: "slot",
  sheet_thickness_mm: 0.1,
  sheet_refractive_index: 1.5,
  filter_change_underwater: "none",
};

/** The same scene with some fields left out or changed. */
export function sceneOf(
  changes: Partial<FilterMountingScene>,
  ...without: (keyof FilterMountingScene)[]
): FilterMountingScene {
  const scene = { ...WIDE_ZOOM, ...changes };
  for (const field of without) delete (scene as Partial<FilterMountingScene>)[field];
  return scene;
}

/** A fisheye without a thread behind a dome. */
export const FISHEYE = sceneOf(
  { lens_kind: "fisheye", field_of_view_deg: 180, dome_radius_mm: 100 },
  "focal_length_mm",
  "lens_thread_mm",
  "filter_thread_mm",
);

/** A compact whose lens does not come off, in a housing with a flat port that has a thread. */
export const COMPACT = sceneOf(
  {
    port_kind: "flat",
    focal_length_mm: 8.8,
    sensor_diagonal_mm: 15.9,
    lens_interchangeable: false,
    port_thread_mm: 67,
    filter_thread_mm: 67,
  },
  "dome_radius_mm",
  "lens_thread_mm",
);

/** A small watertight camera. */
export const ACTION_CAMERA = sceneOf(
  {
    port_kind: "none",
    lens_kind: "fisheye",
    field_of_view_deg: 140,
    f_number: 2.8,
    lens_interchangeable: false,
    filter_thickness_mm: 3,
  },
  "dome_radius_mm",
  "focal_length_mm",
  "sensor_diagonal_mm",
  "lens_thread_mm",
  "filter_thread_mm",
);

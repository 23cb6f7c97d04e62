import type { MountingScene } from "./scene.js";

export interface MountingExample {
  summary: string;
  scene: MountingScene;
}

/** Scenes to learn from and to try. The first has rings, which need POST; the others fit a query string. */
export const mountingExamples = {
  flat_port_and_rings: {
    summary: "Flat port, a 67 mm filter on a lens thread of 52 mm, and the rings to hand",
    scene: {
      port_kind: "flat",
      lens_kind: "standard",
      focal_length_mm: 28,
      sensor_diagonal_mm: 28.4,
      lens_thread_mm: 52,
      filter_thread_mm: 67,
      rings: [
        { id: "52-60", from_mm: 52, to_mm: 60, thickness_mm: 2.5 },
        { id: "60-67", from_mm: 60, to_mm: 67, thickness_mm: 2.5 },
        { id: "67-52", from_mm: 67, to_mm: 52, thickness_mm: 2.5 },
      ],
    },
  },
  fisheye_behind_dome: {
    summary: "Fisheye behind a dome, a sheet behind the lens",
    scene: {
      port_kind: "dome",
      dome_radius_mm: 100,
      lens_kind: "fisheye",
      field_of_view_deg: 180,
      sensor_diagonal_mm: 43.3,
      rear_opening_width_mm: 30,
      rear_opening_height_mm: 24,
      sheet_thickness_mm: 0.1,
    },
  },
  action_camera_flip: {
    summary: "Action camera, a filter that flips away",
    scene: {
      port_kind: "none",
      lens_kind: "fisheye",
      field_of_view_deg: 140,
      f_number: 2.8,
      lens_interchangeable: false,
      holder: "flip",
      filter_change_underwater: "flip",
      filter_clear_diameter_mm: 50,
      filter_thickness_mm: 3,
    },
  },
} as const satisfies Record<string, MountingExample>;

export type MountingExampleName = keyof typeof mountingExamples;

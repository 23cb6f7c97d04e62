import type { KitAdviceRequest } from "./request.js";

/** Kits to ask for. */
export const kitAdviceExamples = {
  a_week_of_dives: {
    summary: "A week of four dives, and what lies on the shelf",
    value: {
      scene: { camera_class: "action" },
      dives: [
        {
          id: "gannet-reef",
          scene: { visibility_m: 25, water_hue: "blue", min_depth_m: 5, max_depth_m: 18 },
        },
        { id: "mole", scene: { water_type: "5C", depth_m: 8 } },
        { id: "lagoon", scene: { water_type: "II", depth_m: 4 } },
        { id: "wreck-by-night", scene: { water_type: "3C", depth_m: 12, daylight_basis: "none" } },
      ],
      pieces: [
        { id: "red-light", item: "lens_filter", filter_kind: "red", filter_density: 0.6 },
        { id: "red-dense", item: "lens_filter", filter_kind: "red", filter_density: 1.2 },
        { id: "magenta", item: "lens_filter", filter_kind: "magenta", filter_stops: 2 },
        { id: "wide-lights", item: "lamp", flux_lm: 4000, count: 2, distance_m: 0.8 },
        { id: "small-light", item: "lamp", flux_lm: 800, distance_m: 0.5 },
      ],
    },
  },
  rings_for_a_port: {
    summary: "Filters of two threads on one lens, and the ring that lets one of them fit",
    value: {
      scene: {
        port_kind: "flat",
        lens_kind: "standard",
        focal_length_mm: 28,
        sensor_diagonal_mm: 28.4,
        lens_thread_mm: 52,
      },
      dives: [
        { id: "gannet-reef", scene: { water_type: "IB", min_depth_m: 5, max_depth_m: 18 } },
        { id: "pinnacle", scene: { water_type: "II", depth_m: 14 } },
      ],
      pieces: [
        { id: "red-52", item: "lens_filter", filter_kind: "red", filter_density: 0.3, filter_thread_mm: 52 },
        { id: "red-67", item: "lens_filter", filter_kind: "red", filter_density: 1.2, filter_thread_mm: 67 },
        { id: "ring-52-67", item: "ring", from_mm: 52, to_mm: 67, thickness_mm: 3 },
      ],
    },
  },
} as const satisfies Record<string, { summary: string; value: KitAdviceRequest }>;

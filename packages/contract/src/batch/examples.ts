import type { BatchRequest } from "./request.js";

/** Batches to ask for. */
export const batchExamples = {
  two_sites_three_suns: {
    summary: "One calculation for two sites under three heights of the sun: six scenes",
    value: {
      operation: "attenuation",
      scene: { water_hue: "blue" },
      vary: [{ depth_m: [12, 8], visibility_m: [25, 12] }, { sun_elevation_deg: [20, 40, 60] }],
    },
  },
  items_one_by_one: {
    summary: "Three scenes, each with its own calculation",
    value: {
      items: [
        {
          id: "gannet-0930",
          operation: "filter-choice",
          scene: { water_type: "IB", depth_m: 12, sun_elevation_deg: 35 },
        },
        {
          id: "mole-1400",
          operation: "exposure-loss",
          scene: { water_type: "5C", depth_m: 8, filter_kind: "magenta", filter_density: 0.6 },
        },
        {
          id: "mole-port",
          operation: "filter-mounting",
          scene: { port_kind: "flat", lens_kind: "standard" },
        },
      ],
    },
  },
} as const satisfies Record<string, { summary: string; value: BatchRequest }>;

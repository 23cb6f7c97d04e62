import type { RuleCases } from "./rule-cases.test-support.js";

const curve = [
  { wavelength_nm: 450, transmittance: 0.2 },
  { wavelength_nm: 650, transmittance: 0.9 },
];

const pair = {
  red_without: 0.4,
  green_without: 0.5,
  blue_without: 0.45,
  red_with: 0.34,
  green_with: 0.15,
  blue_with: 0.12,
};

/** Of the rules on filters and kit. */
export const filtersCases = {
  one_lens_filter: {
    passes: [{ filter_transmittance: curve }, { filter_kind: "red", filter_density: 0.6 }],
    refuses: [
      [{ filter_transmittance: curve, filter_kind: "red", filter_density: 0.6 }, ["/filter_transmittance"]],
      [{ filter_transmittance: curve, filter_density: 0.6 }, ["/filter_transmittance"]],
      [{ filter_transmittance: curve, filter_stops: 2 }, ["/filter_transmittance"]],
      [{ filter_transmittance: curve, filter_samples: [pair] }, ["/filter_samples"]],
      [{ filter_kind: "red", filter_density: 0.6, filter_samples: [pair] }, ["/filter_samples"]],
    ],
  },
  one_filter_strength: {
    passes: [
      { filter_kind: "red", filter_stops: 2 },
      { kit: [{ id: "a", item: "lens_filter", filter_kind: "red", filter_stops: 2 }] },
    ],
    refuses: [
      [{ filter_kind: "red", filter_density: 0.6, filter_stops: 2 }, ["/filter_stops"]],
      [
        {
          kit: [
            { id: "a", item: "lens_filter", filter_kind: "red", filter_density: 0.6 },
            { id: "b", item: "lens_filter", filter_kind: "red", filter_density: 0.6, filter_stops: 2 },
          ],
        },
        ["/kit/1/filter_stops"],
      ],
    ],
  },
  lens_filter_pair: {
    passes: [{ filter_kind: "red", filter_density: 0.6 }, { filter_kind: "red", filter_stops: 2 }, {}],
    refuses: [
      [{ filter_kind: "red" }, ["/filter_kind"]],
      [{ filter_density: 0.6 }, ["/filter_density"]],
      [{ filter_stops: 2 }, ["/filter_stops"]],
    ],
  },
  filter_transmittance_rising: {
    passes: [{ filter_transmittance: curve }],
    refuses: [[{ filter_transmittance: [...curve].reverse() }, ["/filter_transmittance/1/wavelength_nm"]]],
  },
  filter_samples_agree: {
    passes: [{ filter_samples: [pair] }, { filter_samples: [pair, { ...pair, red_with: 0.33 }] }],
    refuses: [
      [{ filter_samples: [pair, { ...pair, red_with: 0.6 }] }, ["/filter_samples/1"]],
      [{ filter_samples: [pair, { ...pair, blue_with: 0.06 }] }, ["/filter_samples/1"]],
      [
        { kit: [{ id: "a", item: "lens_filter", filter_samples: [{ ...pair, green_with: 0.9 }] }] },
        ["/kit/0/filter_samples/0"],
      ],
    ],
  },
  kit_ids_unique: {
    passes: [
      {
        kit: [
          { id: "a", item: "lamp" },
          { id: "b", item: "lamp" },
        ],
      },
      { kit: [] },
    ],
    refuses: [
      [
        {
          kit: [
            { id: "a", item: "lamp" },
            { id: "a", item: "lamp" },
          ],
        },
        ["/kit/1/id"],
      ],
    ],
  },
  kit_filters: {
    passes: [
      { kit: [{ id: "a", item: "lens_filter", filter_kind: "red", filter_density: 0.6 }] },
      { kit: [{ id: "a", item: "lamp_filter", filter_transmittance: curve }] },
    ],
    refuses: [
      [{ kit: [{ id: "a", item: "lens_filter" }] }, ["/kit/0"]],
      [{ kit: [{ id: "a", item: "lens_filter", filter_kind: "red" }] }, ["/kit/0/filter_kind"]],
      [{ kit: [{ id: "a", item: "lens_filter", filter_stops: 2 }] }, ["/kit/0/filter_stops"]],
      [{ kit: [{ id: "a", item: "lamp", filter_stops: 2 }] }, ["/kit/0"]],
      [
        { kit: [{ id: "a", item: "lens_filter", filter_samples: [pair], filter_transmittance: curve }] },
        ["/kit/0"],
      ],
      [
        { kit: [{ id: "a", item: "lens_filter", filter_kind: "red", filter_transmittance: curve }] },
        ["/kit/0"],
      ],
      [{ kit: [{ id: "a", item: "lamp", filter_kind: "red", filter_density: 0.6 }] }, ["/kit/0"]],
    ],
  },
  kit_curves_rising: {
    passes: [{ kit: [{ id: "a", item: "lens_filter", filter_transmittance: curve }] }],
    refuses: [
      [
        { kit: [{ id: "a", item: "lens_filter", filter_transmittance: [...curve].reverse() }] },
        ["/kit/0/filter_transmittance/1/wavelength_nm"],
      ],
    ],
  },
} satisfies RuleCases;

/** Scenes that are valid and lie outside what the model can answer. */
import type { OperationName } from "../../packages/answers/src/operations/calculations.js";
import type { OutsideCode } from "../../packages/contract/src/index.js";

export const base = { water_type: "IB", depth_m: 12 };
export const there = { ...base, latitude_deg: -47.3, longitude_deg: -128.4 };
const murk = {
  kd_samples: [
    { wavelength_nm: 400, kd_per_m: 5 },
    { wavelength_nm: 700, kd_per_m: 5 },
  ],
};
const card = (depth_m: number, [red, green, blue]: readonly number[]) => ({ depth_m, red, green, blue });
const cards = (...card_samples: object[]) => ({
  card_samples,
  transfer_curve: "linear",
  locked_exposure: true,
  locked_balance: true,
  depth_m: 5,
});
const grey = [0.2, 0.3, 0.4] as const;
const opaque = [380, 780].map((wavelength_nm) => ({ wavelength_nm, transmittance: 0 }));
export const mount = { port_kind: "flat", lens_kind: "wide" };
const fisheye = { port_kind: "flat", lens_kind: "fisheye" };

/** For each code, scenes that meet it. */
export const outside: Record<OutsideCode, [calculation: OperationName, scene: object][]> = {
  instant_out_of_range: [["attenuation", { ...there, time: "1850-03-10T10:15:00Z" }]],
  local_time_malformed: [
    ["filter-choice", { ...there, local_time: "1850-03-10T10:15", time_zone: "Etc/GMT+9" }],
  ],
  // A real zone, whose clocks skip that hour (directive 2000/84/EC; IANA).
  local_time_skipped: [
    ["exposure-loss", { ...there, local_time: "2026-03-29T02:30", time_zone: "Europe/Berlin" }],
  ],
  time_zone_unknown: [
    ["dive-advice", { ...there, local_time: "2026-03-10T10:15", time_zone: "Nowhere/Here" }],
  ],
  secchi_depth_out_of_range: [["white-balance", { secchi_depth_m: 89, water_hue: "blue", depth_m: 5 }]],
  visibility_out_of_range: [["attenuation", { visibility_m: 110, water_hue: "blue", depth_m: 5 }]],
  water_hue_contradicts_measure: [["attenuation", { visibility_m: 1, water_hue: "blue", depth_m: 5 }]],
  card_samples_too_few: [["attenuation", cards(card(3, grey), card(4, grey))]],
  card_samples_malformed: [
    ["attenuation", cards(card(3, grey), card(7, [0.999, 0.3, 0.4]))],
    ["attenuation", cards(card(3, grey), card(7, [0.00001, 0.3, 0.4]))],
    ["attenuation", { ...cards(card(3, grey), card(7, grey)), locked_balance: false }],
  ],
  card_samples_contradict: [
    ["attenuation", cards(card(2, grey), card(5, [0.9, 0.1, 0.01]), card(9, [0.01, 0.9, 0.02]))],
  ],
  card_samples_outside_family: [["attenuation", cards(card(3, grey), card(5, [0.14, 0.3, 0.41]))]],
  sun_too_low: [["mixed-light", { ...base, sun_elevation_deg: 1 }]],
  no_light: [
    ["colour-recovery", { ...base, daylight_basis: "none" }],
    [
      "filter-choice",
      {
        ...base,
        filter_transmittance: [380, 729, 731, 780].map((wavelength_nm) => ({
          wavelength_nm,
          transmittance: wavelength_nm > 730 ? 1 : 0,
        })),
      },
    ],
  ],
  no_balance: [
    [
      "white-balance",
      {
        kd_samples: [
          { wavelength_nm: 549, kd_per_m: 20 },
          { wavelength_nm: 554, kd_per_m: 0.02 },
          { wavelength_nm: 566, kd_per_m: 0.02 },
          { wavelength_nm: 571, kd_per_m: 20 },
        ],
        depth_m: 80,
      },
    ],
  ],
  no_daylight_left: [
    ["attenuation", { ...murk, depth_m: 100 }],
    [
      "attenuation",
      {
        kd_samples: [
          { wavelength_nm: 549, kd_per_m: 7 },
          { wavelength_nm: 779, kd_per_m: 20 },
        ],
        daylight_basis: "none",
        depth_m: 100,
      },
    ],
  ],
  no_sight: [["filter-choice", { ...murk, depth_m: 1, subject_distance_m: 20 }]],
  filter_opaque: [
    ["exposure-loss", { ...base, filter_transmittance: opaque }],
    ["filter-choice", { ...base, kit: [{ id: "a", item: "lens_filter", filter_transmittance: opaque }] }],
  ],
  corner_outside_image_circle: [
    ["filter-mounting", { ...fisheye, focal_length_mm: 8, sensor_diagonal_mm: 43.27 }],
  ],
  field_too_wide: [["filter-mounting", { ...fisheye, field_of_view_deg: 180 }]],
  lens_contradicts: [
    ["filter-mounting", { ...mount, focal_length_mm: 16, sensor_diagonal_mm: 43.27, field_of_view_deg: 60 }],
  ],
};

/** The same by the calculation that meets them. */
export const outsideScenes: Partial<Record<string, object[]>> = {};
for (const [name, scene] of Object.values(outside).flat()) {
  outsideScenes[name] = [...(outsideScenes[name] ?? []), scene];
}

import type { RuleCases } from "./rule-cases.test-support.js";

const codes = [
  { light_share: 0, code_share: 0.06 },
  { light_share: 1, code_share: 1 },
];

const sensor = [
  { wavelength_nm: 400, red: 0.01, green: 0.02, blue: 0.2 },
  { wavelength_nm: 460, red: 0.02, green: 0.1, blue: 0.85 },
  { wavelength_nm: 530, red: 0.06, green: 1, blue: 0.15 },
  { wavelength_nm: 600, red: 0.75, green: 0.3, blue: 0.02 },
  { wavelength_nm: 700, red: 0.05, green: 0.02, blue: 0 },
];

/** Of the rules on the camera. */
export const cameraCases = {
  iso_limits_in_order: {
    passes: [{ min_iso: 200, max_iso: 3200 }, { min_iso: 400, max_iso: 400 }, {}],
    refuses: [
      [{ min_iso: 3200, max_iso: 200 }, ["/min_iso"]],
      [{ min_iso: 12800 }, ["/min_iso"]],
      [{ max_iso: 50 }, ["/max_iso"]],
    ],
  },
  iso_within_limits: {
    passes: [{ iso: 100 }, { iso: 6400 }, { iso: 12800, max_iso: 12800 }],
    refuses: [
      [{ iso: 12800 }, ["/iso"]],
      [{ iso: 50 }, ["/iso"]],
      [{ iso: 100, min_iso: 200 }, ["/iso"]],
    ],
  },
  f_number_limits_in_order: {
    passes: [{ min_f_number: 4, max_f_number: 11 }, {}],
    refuses: [
      [{ min_f_number: 11, max_f_number: 4 }, ["/min_f_number"]],
      [{ max_f_number: 2 }, ["/max_f_number"]],
    ],
  },
  f_number_within_limits: {
    passes: [{ f_number: 2.8 }, { f_number: 16 }],
    refuses: [
      [{ f_number: 1.8 }, ["/f_number"]],
      [{ f_number: 22 }, ["/f_number"]],
    ],
  },
  white_balance_cct_K_limits_in_order: {
    passes: [{ white_balance_min_cct_K: 2000, white_balance_max_cct_K: 9000 }, {}],
    refuses: [
      [{ white_balance_min_cct_K: 9000, white_balance_max_cct_K: 9000 }, ["/white_balance_min_cct_K"]],
      [{ white_balance_max_cct_K: 2000 }, ["/white_balance_max_cct_K"]],
    ],
  },
  one_shutter: {
    passes: [{ shutter_s: 0.02 }, { frame_rate_fps: 25 }, { shutter_angle_deg: 90 }, {}],
    refuses: [[{ shutter_s: 0.02, shutter_angle_deg: 90 }, ["/shutter_s"]]],
  },
  shutter_within_frame: {
    passes: [
      { shutter_s: 0.04, frame_rate_fps: 25 },
      { shutter_s: 0.04166667, frame_rate_fps: 24 },
    ],
    refuses: [[{ shutter_s: 0.05, frame_rate_fps: 25 }, ["/shutter_s"]]],
  },
  shutter_not_too_short: {
    passes: [{ frame_rate_fps: 1000, shutter_angle_deg: 90 }],
    refuses: [[{ frame_rate_fps: 1000, shutter_angle_deg: 1 }, ["/shutter_angle_deg"]]],
  },
  one_recording_curve: {
    passes: [{ recording_curve: "hlg" }, { recording_curve_points: codes }],
    refuses: [[{ recording_curve: "log", recording_curve_points: codes }, ["/recording_curve_points"]]],
  },
  recording_curve_points_rising: {
    passes: [{ recording_curve_points: codes }, {}],
    refuses: [
      [
        {
          recording_curve_points: [
            ...codes.slice(0, 1),
            { light_share: 0, code_share: 0.02 },
            ...codes.slice(1),
          ],
        },
        ["/recording_curve_points/1/light_share", "/recording_curve_points/1/code_share"],
      ],
      // Codes that tell nothing apart.
      [
        {
          recording_curve_points: [
            { light_share: 0, code_share: 0 },
            { light_share: 1, code_share: 1e-9 },
          ],
        },
        ["/recording_curve_points/1/code_share"],
      ],
    ],
  },
  recording_curve_points_whole: {
    passes: [{ recording_curve_points: codes }, {}],
    refuses: [
      [
        {
          recording_curve_points: [
            { light_share: 0.1, code_share: 0.3 },
            { light_share: 0.9, code_share: 0.95 },
          ],
        },
        ["/recording_curve_points/0/light_share", "/recording_curve_points/1/light_share"],
      ],
    ],
  },
  sensor_samples_rising: {
    passes: [{ sensor_samples: sensor }, {}],
    refuses: [
      [
        { sensor_samples: sensor.map((sample) => ({ ...sample, wavelength_nm: 500 })) },
        [1, 2, 3, 4].map((n) => `/sensor_samples/${n}/wavelength_nm`),
      ],
    ],
  },
  sensor_samples_usable: {
    passes: [{ sensor_samples: sensor }, {}],
    refuses: [
      // Half of the red is missing.
      [{ sensor_samples: sensor.slice(0, -1) }, ["/sensor_samples"]],
      // One channel in another unit.
      [{ sensor_samples: sensor.map((s) => ({ ...s, blue: s.blue / 100 })) }, ["/sensor_samples"]],
      // Red and blue swapped.
      [{ sensor_samples: sensor.map((s) => ({ ...s, red: s.blue, blue: s.red })) }, ["/sensor_samples"]],
      // Nearly without colours.
      [
        {
          sensor_samples: sensor.map((s) => ({
            ...s,
            red: s.green + 0.02 * s.red,
            blue: s.green + 0.02 * s.blue,
          })),
        },
        ["/sensor_samples"],
      ],
    ],
  },
  kelvin_with_mode: {
    passes: [
      { white_balance_mode: "kelvin", white_balance_kelvin_K: 5600 },
      { white_balance_mode: "auto" },
      {},
    ],
    refuses: [
      [{ white_balance_mode: "kelvin" }, ["/white_balance_mode"]],
      [{ white_balance_kelvin_K: 5600 }, ["/white_balance_kelvin_K"]],
      [{ white_balance_mode: "auto", white_balance_kelvin_K: 5600 }, ["/white_balance_kelvin_K"]],
    ],
  },
  kelvin_within_limits: {
    passes: [
      { white_balance_mode: "kelvin", white_balance_kelvin_K: 10000 },
      { white_balance_kelvin_K: 12000, camera_class: "cinema" },
      {},
    ],
    refuses: [
      [{ white_balance_kelvin_K: 12000 }, ["/white_balance_kelvin_K"]],
      [{ white_balance_kelvin_K: 9000, camera_class: "phone" }, ["/white_balance_kelvin_K"]],
      [{ white_balance_kelvin_K: 5000, white_balance_min_cct_K: 5200 }, ["/white_balance_kelvin_K"]],
    ],
  },
  auto_exposure_free: {
    passes: [
      { exposure_mode: "auto", iso: 400, f_number: 4 },
      { exposure_mode: "manual", iso: 400, f_number: 4, shutter_s: 0.02 },
    ],
    refuses: [[{ exposure_mode: "auto", iso: 400, f_number: 4, shutter_s: 0.02 }, ["/exposure_mode"]]],
  },
  card_balance_not_auto: {
    passes: [{ white_balance_mode: "auto", locked_balance: false }, { locked_balance: true }],
    refuses: [[{ white_balance_mode: "auto", locked_balance: true }, ["/white_balance_mode"]]],
  },
  mounting_kinds: {
    passes: [
      { water_type: "IB" },
      { port_kind: "flat", lens_kind: "wide", field_of_view_deg: 90, rings: [] },
      { f_number: 8, filter_change_underwater: "flip" },
    ],
    refuses: [
      [{ lens_thread_mm: 52 }, ["/lens_thread_mm", "/lens_thread_mm"]],
      [{ port_kind: "flat", field_of_view_deg: 90 }, ["/port_kind"]],
      [{ lens_kind: "wide" }, ["/lens_kind"]],
      [{ rings: [] }, ["/rings", "/rings"]],
    ],
  },
} satisfies RuleCases;

/** Scenes that between them meet every code that advises something, and the cautions that each advice asks for. Tests only. */
import {
  atNight,
  DARK_AND_GREEN,
  daylightScene,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_WITH_LAMPS,
  TWO_LAMPS,
} from "@sunfathom/fixtures/scenes";
import {
  ACTION_CAMERA,
  COMPACT,
  FISHEYE,
  WIDE_ZOOM,
} from "../filter-mounting/mounting-scenes.test-support.js";
import type { Scene } from "../scene/scene.js";
import type { Advised } from "./classified.test-support.js";

const LIGHT = ["lamps_in_water_only", "lamps_not_into_eyes", "lamps_stay_on_rig", "batteries_by_maker"];
/** Each list whole, one of which is enough. */
export const ASKED: Readonly<Record<Advised, readonly (readonly string[])[]>> = {
  light: [LIGHT],
  way_up: [["ascent_first"]],
  balance: [["hover_to_balance"]],
  closer: [["closer_under_control"]],
  filter: [["filter_on_dry_land"], ["filter_flip_practised"]],
  filter_in_water: [["filter_flip_practised"]],
};

const nightByTheClock: Scene = {
  ...NIGHT_WRECK,
  daylight_basis: "place_time",
  latitude_deg: -47.3,
  longitude_deg: -128.4,
  time: "2026-06-10T22:15:00-09:00",
};
const flip = { filter_change_underwater: "flip" } as const;
const red = { filter_kind: "red", filter_density: 0.6 } as const;
const { water_type: _, ...brown } = daylightScene("IB", 50, 2, 6);
const far = { subject_distance_m: 6 } as const;

export const SCENES: readonly Scene[] = [
  OUTER_REEF_MORNING,
  { ...OUTER_REEF_MORNING, subject_in_reach: false },
  HARBOUR_WALL_AFTERNOON,
  DARK_AND_GREEN,
  NIGHT_WRECK,
  REEF_WITH_LAMPS,
  nightByTheClock,
  { ...daylightScene("5C", 30, 1, 20), lamps: [{ ...TWO_LAMPS, distance_m: 0.5 }] },
  { ...atNight(daylightScene("7C", 45, 12)), subject_distance_m: 2, lamps: [TWO_LAMPS] },
  { ...daylightScene("IB", 55, 1, 15), ...flip },
  { ...daylightScene("IB", 45, 2, 30), ...red },
  {
    ...daylightScene("IB", 45, 5, 15),
    white_balance_mode: "auto",
    exposure_mode: "auto",
    finish: "in_camera",
  },
  { ...daylightScene("3C", 45, 2, 9), white_balance_mode: "kelvin", white_balance_kelvin_K: 5600 },
  { ...DARK_AND_GREEN, ...red },
  { ...daylightScene("5C", 15, 2, 14), ...flip, ...red },
  { ...daylightScene("3C", 50, 2, 14), ...far },
  { ...REEF_WITH_LAMPS, water_type: "3C", ...far },
  { ...REEF_WITH_LAMPS, lamps: [{ ...TWO_LAMPS, flux_lm: 15000, distance_m: 0.5 }] },
  { ...REEF_WITH_LAMPS, wanted_lead_stops: 3, wanted_lead_distance_m: 0.8 },
  { ...daylightScene("7C", 20, 4, 18), lamps: [{ ...TWO_LAMPS, distance_m: 1.5 }] },
  { ...daylightScene("9C", 25, 1, 12), lamps: [TWO_LAMPS] },
  { ...daylightScene("IB", 60, 2, 5), lamps: [{ ...TWO_LAMPS, flux_lm: 300, distance_m: 2 }] },
  {
    ...daylightScene("IB", 50, 8, 14),
    lamps: [TWO_LAMPS],
    kit: [
      { id: "red", item: "lens_filter", filter_kind: "red", filter_density: 1.2 },
      { id: "lamp-blue", item: "lamp_filter", filter_kind: "blue", filter_density: 0.9 },
      { id: "video-lamps", item: "lamp" },
    ],
  },
  { ...daylightScene("IB", 50, 8, 14), lamps: [TWO_LAMPS], kit: [{ id: "video-lamps", item: "lamp" }] },
  {
    ...daylightScene("IB", 50, 8, 14),
    lamps: [TWO_LAMPS],
    kit: [
      { id: "red", item: "lens_filter", filter_kind: "red", filter_density: 1.2 },
      { id: "video-lamps", item: "lamp" },
    ],
  },
  daylightScene("IB", 50, 28, 42),
  { ...OUTER_REEF_MORNING, filter_kind: "red", filter_density: 1.2 },
  { ...NIGHT_WRECK, lamps: [{ ...TWO_LAMPS, filter_kind: "blue", filter_density: 0.9 }] },
  { ...REEF_WITH_LAMPS, lamps: [{ ...TWO_LAMPS, filter_kind: "blue", filter_density: 1.2 }] },
  { ...daylightScene("I", 70, 1, 40), f_number: 8, min_iso: 100, filter_change_underwater: "clip_on" },
  { ...atNight(daylightScene("1C", 45, 8, 20)), ...far, lamps: [{ ...TWO_LAMPS, distance_m: 1.2 }] },
  { ...daylightScene("IB", 60, 8, 15), overhead: "cavern", lamps: [TWO_LAMPS] },
  { ...daylightScene("IB", 50, 8, 20), sun_side: "in_frame", camera_tilt_deg: 20 },
  { ...daylightScene("IB", 12, 4, 12), bottom: "macroalgae", bottom_depth_m: 13 },
  { ...daylightScene("II", 45, 5, 15), cloud_oktas: 8 },
  { ...daylightScene("IB", 55, 22, 30), lamps: [{ ...TWO_LAMPS, flux_lm: 6000, distance_m: 1 }] },
  { ...brown, visibility_m: 3, water_hue: "brown" },
];

export const MOUNTED = [WIDE_ZOOM, FISHEYE, COMPACT, ACTION_CAMERA].flatMap((scene) =>
  (["none", "flip", "clip_on"] as const).flatMap((filter_change_underwater) =>
    (["slot", "tape"] as const).map((rear_fixing) => ({ ...scene, filter_change_underwater, rear_fixing })),
  ),
);

import { flatLampNames } from "../scene/flat-lamp-names.js";

// What a kit is sought for with. Plain data, without zod.

/** What a piece can be. */
export const pieceItems = ["lens_filter", "lamp_filter", "lamp", "ring", "holder"] as const;
/** Holders that are a piece of their own. */
export const pieceHolders = ["flip", "clip_on", "action_camera"] as const;

export const mostKitDives = 12;
export const mostKitPieces = 24;

/** Loss against the whole kit that a dive may have, CIEDE2000: about what is just seen. */
export const regretLimit_delta_e00 = { least: 0.05, most: 20, usual: 1 } as const;

/** Sets of pieces up to this size are all tried. */
export const largestExactKit = 4;
/** Rings that are screwed into each other at most. */
export const mostRingsInARow = 3;

export const kitMethods = ["exact", "greedy"] as const;
export const pieceRoles = ["take", "leave", "never_used", "not_judged"] as const;
export const lightUses = [
  "none",
  "lamps_only",
  "lamps_lead",
  "daylight_leads",
  "lamps_with_daylight",
  "lamps_with_filter",
] as const;

const strength = ["filter_kind", "filter_density", "filter_stops", "filter_transmittance", "filter_samples"];
/** Fields that a piece can have, by what it is. */
export const pieceFields: Readonly<Record<(typeof pieceItems)[number], readonly string[]>> = {
  lens_filter: [...strength, "filter_thread_mm", "filter_clear_diameter_mm", "filter_thickness_mm"],
  lamp_filter: strength,
  lamp: ["flux_lm", "count", "beam_angle_deg", "beam_angle_medium", "cct_K", "led", "distance_m"],
  ring: ["from_mm", "to_mm", "thickness_mm"],
  holder: ["holder"],
};
/** Of these, those without which nobody knows what it is. How a filter is described has rules of its own. */
export const piecesNeed: typeof pieceFields = {
  lens_filter: [],
  lamp_filter: [],
  lamp: ["flux_lm", "distance_m"],
  ring: ["from_mm", "to_mm", "thickness_mm"],
  holder: ["holder"],
};

/** Fields that a dive does not have: they are pieces, or stand beside the dives. */
export const besideKitDives = [
  "kit",
  "filter_kind",
  "filter_density",
  "filter_stops",
  "filter_transmittance",
  "filter_samples",
  "lamps",
  ...flatLampNames,
  "wanted_lead_stops",
  "wanted_lead_distance_m",
  "rings",
  "language",
  "units",
  "expect_model_version",
] as const;

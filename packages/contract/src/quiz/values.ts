// The names that requests for questions and their answers can take. Plain data, without zod. That they are those of
// packages/quiz is held by a test beside the service's routes.

export const quizLevels = ["beginner", "working", "expert"] as const;

export const quizUnits = ["metric", "metric_and_imperial"] as const;

export const quizLanguages = ["en", "es"] as const;

export const quizTopics = [
  "light",
  "filter",
  "exposure",
  "balance",
  "lamps",
  "grading",
  "mounting",
  "safety",
] as const;

export const quizInteractions = [
  "single_choice",
  "multiple_choice",
  "numeric",
  "ordering",
  "matching",
] as const;

/** Every kind of question, along the road of light. */
export const quizTemplates = [
  "colour_order",
  "red_left",
  "percent_to_stops",
  "spectrum_most_left",
  "water_from_spectrum",
  "red_reach",
  "filter_for_water",
  "density_to_stops",
  "densities_stack",
  "density_match",
  "density_to_even_out",
  "pay_with_iso",
  "pay_with_aperture",
  "exposure_way",
  "more_red_light",
  "when_to_balance",
  "lamp_only_balance",
  "kelvin_order",
  "kelvin_meaning",
  "mired_shift",
  "mixed_verdict",
  "way_out",
  "lamp_falloff",
  "lamp_path",
  "red_in_post",
  "ring_chain",
  "ring_direction",
  "flat_port_field",
  "sheet_shift",
  "mount_place",
  "safe_lamps",
  "order_of_dive",
  "shutter_angle",
  "histogram_code",
  "loss_budget",
  "sun_turn",
  "balance_lasts",
  "balance_target",
  "backscatter_order",
  "lamp_filter_water",
  "filter_two_dives",
  "codes_per_stop",
  "card_reading",
  "grade_saves",
  "auto_settings",
  "mount_faults",
  "safe_batteries",
  "kept_balance",
  "lamp_place",
  "mount_order",
  "contrast_order",
  "sun_or_depth",
  "brightest_hour",
  "floor_light",
  "recording_gain",
  "histogram_reading",
] as const;

/** When a paper tells its marks. */
export const quizReleases = ["at_once", "after_close"] as const;

/** Versions of Question and Test Interoperability (1EdTech) that a package can be of. */
export const qtiVersions = ["3.0", "2.1"] as const;

/** What a paper is packed as: the default first. */
export const quizPackageFormats = ["qti", "scorm_1_2"] as const;

/** Most questions of a paper. */
export const mostQuestions = 200;

/**
 * Why the model can have no answer to a valid scene: codes of the errors of `outside_the_model`. An open list. What the
 * contract itself refuses before the model is asked is not in it.
 */
export const outsideCodes = [
  "instant_out_of_range",
  "local_time_malformed",
  "local_time_skipped",
  "time_zone_unknown",
  "secchi_depth_out_of_range",
  "visibility_out_of_range",
  "water_hue_contradicts_measure",
  "card_samples_too_few",
  "card_samples_malformed",
  "card_samples_contradict",
  "card_samples_outside_family",
  "sun_too_low",
  "no_light",
  "no_balance",
  "no_daylight_left",
  "no_sight",
  "filter_opaque",
  "corner_outside_image_circle",
  "field_too_wide",
  "lens_contradicts",
] as const;

export type OutsideCode = (typeof outsideCodes)[number];

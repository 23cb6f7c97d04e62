import type { OutsideCode } from "@sunfathom/contract";

/** What each code of a scene outside the model means. */
export const outsideMeanings: Readonly<Record<OutsideCode, string>> = {
  instant_out_of_range: "The model does not know the sun's position in that year.",
  local_time_malformed: "`local_time` is not a date and time of the calendar.",
  local_time_skipped: "The clocks of the place went forward over this time and never showed it.",
  time_zone_unknown: "`time_zone` is not a name of the IANA time zone database.",
  secchi_depth_out_of_range: "No natural water has such a Secchi depth.",
  visibility_out_of_range: "No natural water has such a visibility.",
  water_hue_contradicts_measure: "Water of that hue does not have such a visibility or Secchi depth.",
  card_samples_too_few: "The card samples are from depths too close together.",
  card_samples_malformed: "One picture of the card is of no use: `parameters` says why.",
  card_samples_contradict: "No water explains the card samples.",
  card_samples_outside_family: "The card samples point to water that does not occur.",
  sun_too_low: "The sun is too low for the daylight model, and too high for night.",
  no_light: "No light reaches the sensor: there is no source, or the filter on the lens lets none through.",
  no_balance: "A channel of the camera receives nothing that a gain could bring back.",
  no_daylight_left: "At that depth this water leaves no daylight.",
  no_sight: "No light gets through that much of this water.",
  filter_opaque: "The measured curve of a filter lets no visible light through.",
  corner_outside_image_circle: "The image circle of the fisheye does not reach the corners of the format.",
  field_too_wide: "No lens of this kind sees so wide behind this port.",
  lens_contradicts: "Focal length, format and field of view contradict each other.",
};

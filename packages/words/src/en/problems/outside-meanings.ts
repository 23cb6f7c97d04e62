import type { OutsideCode } from "@sunfathom/contract";

/** What each code of a scene outside the model means. */
export const outsideMeanings: Readonly<Record<OutsideCode, string>> = {
  instant_out_of_range: "The sun's place is not known for that year.",
  local_time_malformed: "`local_time` is no date and time of the calendar.",
  local_time_skipped: "The clocks of the place were put forward over this time and never showed it.",
  time_zone_unknown: "`time_zone` is no name of the IANA time zone database.",
  secchi_depth_out_of_range: "No natural water shows such a Secchi depth.",
  visibility_out_of_range: "No natural water shows such a visibility.",
  water_hue_contradicts_measure: "Water of that hue does not show such a visibility or Secchi depth.",
  card_samples_too_few: "The depths at which the card was taken lie too close together.",
  card_samples_malformed: "A picture of the card cannot be used: `parameters` says why.",
  card_samples_contradict: "No water explains the card samples.",
  card_samples_outside_family: "The card samples ask for a water that does not occur.",
  sun_too_low: "The sun stands too low for the daylight model, and too high for night.",
  no_light: "No light reaches the sensor: there is no source, or the filter on the lens passes none.",
  no_balance: "A channel of the camera receives nothing that a gain could bring back.",
  no_daylight_left: "So deep in this water nothing is left of daylight.",
  no_sight: "No light crosses so much of this water.",
  filter_opaque: "The measured curve of a filter lets no visible light through.",
  corner_outside_image_circle: "The image circle of the fisheye does not reach the corners of the format.",
  field_too_wide: "No lens of this kind sees so wide behind this port.",
  lens_contradicts: "Focal length, format and field of view do not belong together.",
};

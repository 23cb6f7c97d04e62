import { type SceneRuleParameters, shortestShutter_s } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { shown } from "../format.js";
import {
  halfFilter,
  limitsInOrder,
  missing,
  notRising,
  notWhole,
  repeatedId,
  withinLimits,
} from "./rule-parts.js";
import { sensorRules } from "./sensor-rules.js";
import { waterWays } from "./water-ways.js";

/** What is wrong where a rule between fields of a scene is broken. */
export const sceneRuleTexts: Texts<SceneRuleParameters, FieldText> = {
  one_water_basis: ({ given }) =>
    text(
      given === 0
        ? "The scene does not describe the water."
        : `The scene describes the water in ${given} ways.`,
      `exactly one of: ${waterWays}`,
    ),
  water_companions: (p) =>
    p.case === "missing"
      ? text(missing(p.missing), `${p.field} together with ${p.missing}`)
      : text(
          `${p.field} has no effect without ${p.goes_with.join(" or ")}.`,
          `with ${p.goes_with.join(" or ")}, or not at all`,
        ),
  kd_samples_rising: notRising("kd_samples"),
  card_exposure_whole: notWhole,
  card_gains_whole: notWhole,
  sun_with_basis_sun: ({ daylight_basis }) =>
    text(
      `You gave the sun's height, but daylight_basis is ${daylight_basis}.`,
      "leave it out, or daylight_basis sun",
    ),
  place_with_basis_place_time: ({ field, daylight_basis }) =>
    text(
      `${field} has no effect with daylight_basis ${daylight_basis}.`,
      "leave it out, or daylight_basis place_time",
    ),
  place_and_time_whole: (p) =>
    p.case === "missing"
      ? text(
          `${p.field} is missing: the sun's height follows from place and time.`,
          "latitude_deg and longitude_deg",
        )
      : text(
          {
            twice: "You gave the time twice.",
            half: "local_time and time_zone go together: one of the two is missing.",
            not_given: "The time is missing.",
          }[p.case],
          "time, or local_time and time_zone",
        ),
  day_exists: () => text("That month does not have this day.", "a day of the calendar"),
  one_depth: (p) =>
    text(
      p.case === "missing"
        ? missing(p.field)
        : p.case === "twice"
          ? "You gave the depth twice."
          : "The depth is missing.",
      "depth_m, or min_depth_m together with max_depth_m",
    ),
  depths_in_order: ({ min_depth_m, max_depth_m }) =>
    text(`${min_depth_m} m is deeper than max_depth_m, ${max_depth_m} m.`, `at most ${max_depth_m} m`),
  one_sun_side: () => text("You gave the side of the sun twice.", "sun_side, or camera_heading_deg"),
  heading_with_place_time: ({ daylight_basis }) =>
    text(
      `With daylight_basis ${daylight_basis} the sun's direction is unknown, so a heading has no effect.`,
      "with place and time, or sun_side in its place",
    ),
  one_bottom: () => text("You gave the sea floor twice.", "bottom, or bottom_reflectance"),
  bottom_with_depth: () =>
    text(
      "bottom is none, so a depth of the sea floor has no effect.",
      "leave it out, or say what the floor is",
    ),
  bottom_below_camera: ({ bottom_depth_m, deepest_m }) =>
    text(
      `The sea floor at ${bottom_depth_m} m is above the deepest subject, at ${deepest_m} m.`,
      `at least ${deepest_m} m`,
    ),
  bottom_reflectance_rising: notRising("bottom_reflectance"),
  iso_limits_in_order: limitsInOrder("not above"),
  iso_within_limits: withinLimits,
  f_number_limits_in_order: limitsInOrder("not above"),
  f_number_within_limits: withinLimits,
  white_balance_cct_K_limits_in_order: limitsInOrder("below"),
  one_shutter: () =>
    text("You gave the exposure time twice.", "shutter_s, or shutter_angle_deg with frame_rate_fps"),
  shutter_within_frame: ({ frame_rate_fps, frame_s }) =>
    text(
      `At ${frame_rate_fps} frames per second a frame lasts ${frame_s} s, and the exposure time cannot be longer.`,
      `at most ${frame_s} s`,
    ),
  shutter_not_too_short: ({ shutter_s, shortest_s }) =>
    text(
      `Frame rate and shutter angle give an exposure time of 1/${shown(Number((1 / shutter_s).toPrecision(2)))} s, which is too short.`,
      `a larger angle or a lower rate: at least ${shortest_s} s`,
    ),
  one_recording_curve: () =>
    text("You gave the recording curve twice.", "recording_curve, or recording_curve_points"),
  recording_curve_points_rising: ({ field, value, before, least_rise }) =>
    text(
      `In recording_curve_points ${field} has to rise: ${value} follows ${before}.`,
      least_rise > 0 ? `above ${before} by at least ${least_rise}` : `above ${before}`,
    ),
  recording_curve_points_whole: ({ wanted, light_share }) =>
    text(
      `The curve ${wanted === 0 ? "begins" : "ends"} at a light_share of ${light_share}: ${wanted === 0 ? "darker" : "brighter"} light has no code value.`,
      `${wanted} for the ${wanted === 0 ? "first" : "last"} point`,
    ),
  ...sensorRules,
  kelvin_with_mode: (p) =>
    p.case === "missing"
      ? text(
          "white_balance_mode is kelvin, but white_balance_kelvin_K is missing.",
          "white_balance_kelvin_K, or white_balance_mode card or auto",
        )
      : text(
          `white_balance_mode ${p.white_balance_mode} does not use a value in kelvin.`,
          "leave it out, or white_balance_mode kelvin",
        ),
  kelvin_within_limits: ({ white_balance_kelvin_K, min_K, max_K }) =>
    text(
      `The camera's white balance cannot be set to ${white_balance_kelvin_K} K.`,
      `${min_K} to ${max_K}, or other limits in white_balance_min_cct_K and white_balance_max_cct_K`,
    ),
  auto_exposure_free: ({ fixed }) =>
    text(
      `${fixed.join(", ")} are fixed, so automatic exposure has nothing left to set.`,
      "exposure_mode manual, or leave one of them out",
    ),
  card_balance_not_auto: () =>
    text(
      "With white_balance_mode auto the camera keeps changing its white balance, so it is not locked from one picture of the card to the next.",
      "white_balance_mode card or kelvin for raw pictures or one balance, or leave locked_balance out",
    ),
  one_lens_filter: () => text("You gave the lens filter twice.", oneFilter),
  one_filter_strength: () =>
    text("You gave the filter's density twice.", "filter_density or filter_stops, not both"),
  lens_filter_pair: halfFilter("the filter on the lens"),
  filter_transmittance_rising: notRising("filter_transmittance"),
  filter_samples_agree: (p) =>
    text(
      p.case === "brighter"
        ? `The card is ${p.stops} stops brighter in ${p.colour} with the filter than without it, which no filter can do.`
        : `This pair and an earlier one differ by ${p.stops} stops in ${p.colour}.`,
      "photograph the card with and without the filter in the same light, with the same exposure and white balance, and give linear values",
    ),
  kit_ids_unique: repeatedId,
  kit_filters: (p) => {
    if (p.case === "half") return halfFilter("this filter of the kit")(p);
    if (p.case === "lamp") return text("This item is a video light, not a filter.", "no filter fields");
    return text(
      p.case === "twice" ? "You gave the filter twice." : "The filter is not described.",
      oneFilter,
    );
  },
  kit_curves_rising: notRising("filter_transmittance"),
  lamp_colour: ({ fields }) => text("You gave the colour of the video light twice.", fields.join(" or ")),
  lamp_filter_pair: halfFilter("the filter on the video light"),
  lamps_once: () => text("You gave the video lights twice.", "`lamps`, or fields that begin with `lamp_`"),
  lamp_complete: (p) => text(missing(p.missing), "lamp_flux_lm together with lamp_distance_m"),
  lead_distance_with_stops: () =>
    text(
      "wanted_lead_distance_m has no effect without wanted_lead_stops.",
      "with wanted_lead_stops, or not at all",
    ),
  overhead_parts: ({ field, goes_with }) =>
    text(
      `${field} has no effect without overhead ${goes_with.join(" or ")}.`,
      `with overhead ${goes_with.join(" or ")}, or not at all`,
    ),
  cave_is_dark: ({ daylight_basis }) =>
    text(
      `A cave has no daylight, but daylight_basis is ${daylight_basis}.`,
      "overhead cavern where daylight reaches, or daylight_basis none",
    ),
  mounting_kinds: (p) => text(missing(p.missing), "port_kind and lens_kind"),
};

const oneFilter =
  "filter_kind and filter_density (or filter_stops), or filter_transmittance, or filter_samples";

/** What each of them says. Made when asked for: a page that computes without a service explains no codes, and downloads none of it. */
export const sceneRuleMeanings = (): Readonly<Record<keyof SceneRuleParameters, string>> => ({
  one_water_basis: "Describe the water in exactly one way.",
  water_companions:
    "`water_hue` goes with `secchi_depth_m` and `visibility_m`; `transfer_curve`, `locked_exposure` and `locked_balance` go with `card_samples`.",
  kd_samples_rising: "The wavelengths of `kd_samples` rise from sample to sample.",
  card_exposure_whole: "A card sample has all of `iso`, `shutter_s`, `f_number`, or none.",
  card_gains_whole: "A card sample has all of `red_gain`, `green_gain`, `blue_gain`, or none.",
  sun_with_basis_sun: "`sun_elevation_deg` goes only with `daylight_basis` `sun`.",
  place_with_basis_place_time: "Place and time go only with `daylight_basis` `place_time`.",
  place_and_time_whole:
    "`daylight_basis` `place_time` needs `latitude_deg`, `longitude_deg` and either `time` or `local_time` with `time_zone`.",
  day_exists: "The day of `time` or `local_time` exists in its month.",
  one_depth: "Give the depth as `depth_m`, or as `min_depth_m` together with `max_depth_m`.",
  depths_in_order: "`min_depth_m` is not below `max_depth_m` in the water.",
  one_sun_side: "Give the side of the sun as `sun_side` or as `camera_heading_deg`.",
  heading_with_place_time:
    "`camera_heading_deg` goes only with `daylight_basis` `place_time`, which gives the sun's direction.",
  one_bottom: "Give the sea floor as `bottom` or as `bottom_reflectance`.",
  bottom_with_depth: "`bottom_depth_m` goes with a sea floor: not with `bottom` `none`.",
  bottom_below_camera: "The sea floor is not above what you film.",
  bottom_reflectance_rising: "The wavelengths of `bottom_reflectance` rise from sample to sample.",
  iso_limits_in_order: "`min_iso` is not above `max_iso`.",
  iso_within_limits: "`iso` lies between `min_iso` and `max_iso`.",
  f_number_limits_in_order: "`min_f_number` is not above `max_f_number`.",
  f_number_within_limits: "`f_number` lies between `min_f_number` and `max_f_number`.",
  white_balance_cct_K_limits_in_order: "`white_balance_min_cct_K` is below `white_balance_max_cct_K`.",
  one_shutter: "Give the exposure time as `shutter_s`, or by `shutter_angle_deg` and `frame_rate_fps`.",
  shutter_within_frame: "`shutter_s` is no longer than a frame at `frame_rate_fps`.",
  shutter_not_too_short: `The exposure time from \`frame_rate_fps\` and \`shutter_angle_deg\` is at least ${shortestShutter_s} s.`,
  one_recording_curve: "Give the recording curve as `recording_curve` or as `recording_curve_points`.",
  recording_curve_points_rising:
    "Light and code values of `recording_curve_points` rise from point to point, codes by at least 0.001.",
  recording_curve_points_whole: "`recording_curve_points` begin at a `light_share` of 0 and end at one of 1.",
  sensor_samples_rising: "The wavelengths of `sensor_samples` rise from sample to sample.",
  sensor_samples_usable:
    "`sensor_samples` cover 420 to 680 nm, and their channels differ: blue sees the shortest waves, red the longest.",
  kelvin_with_mode: "`white_balance_kelvin_K` and `white_balance_mode` `kelvin` go together.",
  kelvin_within_limits:
    "`white_balance_kelvin_K` lies between `white_balance_min_cct_K` and `white_balance_max_cct_K`.",
  auto_exposure_free:
    "With `exposure_mode` `auto`, leave out at least one of `iso`, `f_number` and `shutter_s`.",
  card_balance_not_auto: "`locked_balance` does not go with `white_balance_mode` `auto`.",
  one_lens_filter:
    "Give the lens filter as `filter_kind` and `filter_density`, as `filter_transmittance`, or as `filter_samples`.",
  one_filter_strength: "Give the strength of a filter as `filter_density` or as `filter_stops`.",
  lens_filter_pair: "`filter_kind` and `filter_density`, or `filter_stops`, go together.",
  filter_transmittance_rising: "The wavelengths of `filter_transmittance` rise from sample to sample.",
  filter_samples_agree:
    "Pairs of `filter_samples` agree: a filter costs light, and costs every pair the same.",
  kit_ids_unique: "No two items of the kit have the same `id`.",
  kit_filters:
    "A filter of the kit has `filter_kind` with `filter_density`, or `filter_transmittance`, or `filter_samples`; a video light has none of them.",
  kit_curves_rising: "The wavelengths of a `filter_transmittance` in the kit rise from sample to sample.",
  lamp_colour: "Give the colour of a video light as `cct_K` or as `led`.",
  lamp_filter_pair: "Kind and density of a video light's filter go together.",
  lamps_once: "Give video lights as the list `lamps`, or as one group of `lamp_` fields.",
  lamp_complete: "A group of `lamp_` fields needs at least `lamp_flux_lm` and `lamp_distance_m`.",
  lead_distance_with_stops: "`wanted_lead_distance_m` goes with `wanted_lead_stops`.",
  overhead_parts:
    "`daylight_open_share` goes with `overhead` `overhang`, `cavern` or `wreck`, the thicknesses of ice and snow with `ice`.",
  cave_is_dark:
    "`overhead` `cave` goes with `daylight_basis` `none`; where daylight reaches it is a `cavern`.",
  mounting_kinds: "What a filter is mounted on begins with `port_kind` and `lens_kind`.",
});

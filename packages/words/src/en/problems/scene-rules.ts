import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import {
  halfFilter,
  limitsInOrder,
  missing,
  notRising,
  notWhole,
  repeatedId,
  withinLimits,
} from "./rule-parts.js";
import { waterWays } from "./water-ways.js";

/** What is wrong where a rule between fields of a scene is broken. */
export const sceneRuleTexts: Texts<SceneRuleParameters, FieldText> = {
  one_water_basis: ({ given }) =>
    text(
      `The water is ${given === 0 ? "not described" : `described in ${given} ways at once`}.`,
      `exactly one of: ${waterWays}`,
    ),
  water_companions: (p) =>
    p.case === "missing"
      ? text(missing(p.missing), `${p.field} together with ${p.missing}`)
      : text(`${p.field} says nothing here.`, `with ${p.goes_with.join(" or ")}, or not at all`),
  kd_samples_rising: notRising,
  card_exposure_whole: notWhole,
  card_gains_whole: notWhole,
  sun_with_basis_sun: ({ daylight_basis }) =>
    text(
      `The height of the sun is given, but daylight_basis is ${daylight_basis}.`,
      "leave it out, or daylight_basis sun",
    ),
  place_with_basis_place_time: ({ field, daylight_basis }) =>
    text(
      `${field} says nothing where daylight_basis is ${daylight_basis}.`,
      "leave it out, or daylight_basis place_time",
    ),
  place_and_time_whole: (p) =>
    p.case === "missing"
      ? text(
          `${p.field} is missing: the sun's height follows from place and time.`,
          "latitude_deg and longitude_deg",
        )
      : text(
          `The time is ${{ twice: "given twice", half: "half given", not_given: "not given" }[p.case]}.`,
          "time, or local_time and time_zone",
        ),
  day_exists: () => text("The month has no such day.", "a day of the calendar"),
  one_depth: (p) =>
    text(
      p.case === "missing"
        ? missing(p.field)
        : `The depth is ${p.case === "twice" ? "given twice" : "not given"}.`,
      "depth_m, or min_depth_m together with max_depth_m",
    ),
  depths_in_order: ({ min_depth_m, max_depth_m }) =>
    text(`${min_depth_m} m is deeper than max_depth_m, ${max_depth_m} m.`, `at most ${max_depth_m} m`),
  one_sun_side: () => text("Where the sun stands is given twice.", "sun_side, or camera_heading_deg"),
  heading_with_place_time: ({ daylight_basis }) =>
    text(
      `Where daylight_basis is ${daylight_basis}, nobody knows where the sun stands against this heading.`,
      "with place and time, or sun_side in its place",
    ),
  one_bottom: () => text("The sea floor is given twice.", "bottom, or bottom_reflectance"),
  bottom_with_depth: () =>
    text(
      "A depth of the sea floor says nothing where bottom is none.",
      "leave it out, or say what the floor is",
    ),
  bottom_below_camera: ({ bottom_depth_m, deepest_m }) =>
    text(
      `The sea floor at ${bottom_depth_m} m lies above the deepest subject, at ${deepest_m} m.`,
      `at least ${deepest_m} m`,
    ),
  bottom_reflectance_rising: notRising,
  iso_limits_in_order: limitsInOrder("not above"),
  iso_within_limits: withinLimits,
  f_number_limits_in_order: limitsInOrder("not above"),
  f_number_within_limits: withinLimits,
  white_balance_cct_K_limits_in_order: limitsInOrder("below"),
  one_shutter: () =>
    text("The exposure time is given twice.", "shutter_s, or shutter_angle_deg with frame_rate_fps"),
  shutter_within_frame: ({ frame_rate_fps, frame_s }) =>
    text(`At ${frame_rate_fps} frames per second a frame lasts ${frame_s} s.`, `at most ${frame_s} s`),
  shutter_not_too_short: ({ shutter_s, shortest_s }) =>
    text(
      `Frame rate and shutter angle give an exposure time of ${shutter_s} s.`,
      `a larger angle or a lower rate: at least ${shortest_s} s`,
    ),
  one_lens_filter: () => text("The lens filter is given twice.", oneFilter),
  lens_filter_pair: halfFilter,
  filter_transmittance_rising: notRising,
  kit_ids_unique: repeatedId,
  kit_filters: (p) => {
    if (p.case === "half") return halfFilter(p);
    if (p.case === "lamp") return text("A lamp is no filter.", "no filter fields");
    return text(`The filter is ${p.case === "twice" ? "given twice" : "not described"}.`, oneFilter);
  },
  kit_curves_rising: notRising,
  lamp_colour: ({ fields }) => text("The lamp's colour is given twice.", fields.join(" or ")),
  lamp_filter_pair: halfFilter,
  lamps_once: () => text("Lamps are given twice.", "lamps, or fields that begin with lamp_"),
  lamp_complete: (p) => text(missing(p.missing), "lamp_flux_lm together with lamp_distance_m"),
};

const oneFilter = "filter_kind and filter_density, or filter_transmittance";

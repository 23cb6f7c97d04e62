import type { TripRuleCode, TripRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { kitRuleMeanings, kitRules } from "./kit-rules.js";

/** What is wrong between the parts of a plan for a trip. */
export const tripRules: Texts<TripRuleParameters, FieldText> = {
  ...kitRules,
  date_exists: ({ date }) =>
    fieldText(`There is no ${date}.`, "a day of the calendar from 1900 to 2100, as in 2027-01-16"),
  dates_in_order: ({ first, last }) => fieldText(`${last} is before ${first}.`, `${first} or a later day`),
  dates_at_most: ({ days, most }) => fieldText(`These are ${days} days.`, `up to ${most} days`),
  opening_in_order: ({ opens_at, closes_at, least_min }) =>
    fieldText(
      `From ${opens_at} to ${closes_at} no window has room.`,
      `a time at least ${least_min} minutes after ${opens_at}, on the same day`,
    ),
  site_field: ({ name }) =>
    fieldText(
      `A site has no ${name} here.`,
      "place, dates, forecast, language and units beside the site; sun_side in place of a heading",
    ),
  forecast_once: ({ date, first }) =>
    fieldText(`An earlier entry is for the same time on ${date}: ${first}.`, "one entry for each time"),
  aim_needs_lamps: () =>
    fieldText("The site has no video lights that could lead.", "a site with video lights, or another aim"),
  trip_ids_unique: ({ first }) =>
    fieldText(`This id is that of ${first}.`, "an id that no other one in the list has"),
  trip_dive_field: ({ name }) =>
    fieldText(
      `The scene of a dive has no ${name} here.`,
      "water, place or sun, cloud, depths, view and sea floor; the time beside the scene, cameras and filters with guests and shelf",
    ),
  trip_camera_field: ({ name }) =>
    fieldText(
      `A guest's camera has no ${name} here.`,
      "how the camera exposes, balances and records, lens, port and rings; filters in `kit` or `shelf`, the rest in the scene of a dive",
    ),
  trip_shelf_filters: () => fieldText("Only filters for the lens are handed out.", "lens_filter"),
  trip_guest_known: ({ id }) => fieldText(`There is no guest ${id}.`, "the `id` of one of the guests"),
  trip_size: ({ judged, most }) =>
    fieldText(
      `These are ${judged} filters to judge, before all cameras and on all dives.`,
      `up to ${most}: dives times different cameras times different filters, none among them; ask for a few days at a time`,
    ),
  profile_one_way: ({ both }) =>
    fieldText(
      both ? "A dive comes as samples or as a file, and here it comes as both." : "There is no dive.",
      "samples or uddf, one of the two",
    ),
  uddf_not_well_formed: ({ line, column }) =>
    fieldText(`The file is no well-formed XML: line ${line}, column ${column}.`, "a file in UDDF 3.2"),
  uddf_harmful: ({ case: what, line, most }) =>
    what === "doctype"
      ? fieldText(
          `The file has a document type declaration: line ${line}.`,
          "a file without one, and without entities of its own",
        )
      : what === "too_deep"
        ? fieldText(
            `The file has elements too deep in each other: line ${line}.`,
            `up to ${most} elements in each other`,
          )
        : fieldText(`The dive has more waypoints than are taken: line ${line}.`, `up to ${most} waypoints`),
  uddf_element: ({ case: what, path, dives }) => {
    const listed = dives.length > 0 ? `uddf_dive: ${dives.join(", ")}` : "a dive with waypoints";
    switch (what) {
      case "root":
        return fieldText(`The file begins with ${path}, not with uddf.`, "a file in UDDF 3.2");
      case "version":
        return fieldText(`The file has another version than 3.2: ${path}.`, "version 3.2, as in 3.2.1");
      case "no_dive":
        return fieldText(`The file has no dive: ${path}.`, "a dive with waypoints");
      case "no_such_dive":
        return fieldText(`The file has no dive of that id: ${path}.`, listed);
      case "which_dive":
        return fieldText(`The file has several dives: ${path}.`, listed);
      case "no_samples":
        return fieldText(
          `The dive has fewer than two waypoints: ${path}.`,
          "two waypoints or more, at different times",
        );
    }
  },
  uddf_value: ({ case: what, path, line, value, bound }) => {
    const where = `${path}, in the waypoint of line ${line}`;
    switch (what) {
      case "missing":
        return fieldText(`There is no ${where}.`, "depth and divetime in each waypoint");
      case "not_a_number":
        return fieldText(`${value} is not a number: ${where}.`, `0 to ${bound}`);
      case "out_of_range":
        return fieldText(`${value} is out of range: ${where}.`, `0 to ${bound}`);
      case "order":
        return fieldText(`${value} s does not follow ${bound} s: ${where}.`, `more than ${bound} s`);
    }
  },
  beside_dive: ({ name }) =>
    fieldText(
      `A site has no ${name} here.`,
      "depths are those of the dive; language, units and expect_model_version stand beside the site",
    ),
  samples_in_order: ({ time_s, before_s }) =>
    fieldText(`The dive goes back in time: ${time_s} s follows ${before_s} s.`, `more than ${before_s} s`),
  clip_within_dive: ({ from, to, first, last }) =>
    fieldText(
      `The clip runs from ${from} to ${to} by the camera's clock, and the dive from ${first} to ${last}.`,
      `from ${first} to ${last}; start_clock and clock_offset_s say how the clocks go together`,
    ),
  clips_apart: ({ other }) =>
    fieldText(
      `The clip begins before another one ends: ${other}.`,
      "clips of one camera, one after the other",
    ),
  event_within_dive: ({ time_s, first_s, last_s }) =>
    fieldText(`At ${time_s} s there was no dive.`, `${first_s} to ${last_s} s`),
  events_need_filter: () =>
    fieldText("The filter changed, and the site has none.", "filter_kind and filter_density in the site"),
  frame_one_place: ({ both }) =>
    fieldText(
      both ? "The card has its place twice." : "Nobody says where the card was.",
      "time_s or depth_m, one of the two",
    ),
  frames_need_filter: () =>
    fieldText(
      "Cards were filmed through a filter, and the site has none of a known kind and density.",
      "filter_kind and filter_density in the site",
    ),
};

/** The same for programs that look a code up. */
export const tripRuleMeanings: Readonly<Record<TripRuleCode, string>> = {
  ...kitRuleMeanings,
  date_exists: "A day is none of the calendar, or none of the years from 1900 to 2100.",
  dates_in_order: "The last day is before the first one.",
  dates_at_most: "There are more days than an answer has.",
  opening_in_order:
    "Closing time is before opening time, or so soon after it that no window has room between them.",
  site_field: "The site names a field that stands beside it, or that does not go with many hours.",
  forecast_once: "Two entries of the forecast are for the same hour, or for the same whole day.",
  aim_needs_lamps: "The aim is that video lights lead, and the site has none.",
  trip_ids_unique: "Two of the same list have the same id.",
  trip_dive_field: "The scene of a dive names a field that stands beside it, with a guest or on the shelf.",
  trip_camera_field: "A guest's camera names a field that belongs to a filter or to a dive.",
  trip_shelf_filters: "The shelf has something other than filters for a lens.",
  trip_guest_known: "The calendar is asked for a guest who is not among the guests.",
  trip_size: "There are more filters to judge, before cameras and on dives, than one answer takes.",
  profile_one_way: "A dive comes as samples or as a file: one of the two.",
  uddf_not_well_formed: "The file is no well-formed XML.",
  uddf_harmful:
    "The file has a document type declaration, elements too deep in each other, or more waypoints than are taken.",
  uddf_element: "The file is no UDDF 3.2, or has no dive, not the one asked for, or several.",
  uddf_value:
    "A waypoint of the file lacks `depth` or `divetime`, or has one that is not a number, out of range or out of order.",
  beside_dive: "The site names a field that stands beside it, or that the dive itself says.",
  samples_in_order: "A sample of a dive is not later than the one before it.",
  clip_within_dive: "A clip begins before the dive or ends after it, by the camera's clock.",
  clips_apart: "Two clips overlap.",
  event_within_dive: "An event lies before the first sample of the dive or after its last one.",
  events_need_filter: "Events change the filter, and the site has none.",
  frame_one_place: "A card has its time or its depth: one of the two.",
  frames_need_filter:
    "Cards were filmed through a filter, and the site has none of a known kind and density.",
};

import type { FilterMountingReasons, PupilBasis, StepRing } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { shown } from "../format.js";
import { mountingHolders } from "../mounting-holders.js";

/** Reasons on where a filter goes. */
export const filterMountingReasons: Texts<FilterMountingReasons, string> = {
  mount_asked_does_not_fit: (p) =>
    `As asked, ${mountingHolders[p.asked]} does not fit this camera. Use ${mountingHolders[p.instead]} instead.`,
  mount_nothing_fits: () => "As things stand no holder fits; what would have to change is said below.",

  mount_on_lens: () =>
    "The filter screws onto the lens inside the housing: in air, safe from knocks, but fixed for the whole dive.",
  mount_outside_fixed: () =>
    "The filter sits in the water in front of the flat window and stays on for the dive.",
  mount_outside_changed: () =>
    "The filter sits in the water in front of the flat window, where it can be swung or taken off and put back at depth.",
  mount_over_window: () =>
    "A frame made for this camera holds the filter over its window, close to the lens.",
  mount_behind_lens: () =>
    "A sheet behind the lens needs no room in front of it: it fits bulging lenses and any dome, and cannot darken the corners as a rim in front does. It is fixed for the whole dive.",

  mount_window_is_port: () =>
    "This camera's own window is its port: there is no lens inside that could be reached.",
  mount_front_bulges: () =>
    "A fisheye's front element bulges and leaves no room for a thread: the filter goes behind the lens.",
  mount_lens_without_thread: () => "The lens has no filter thread: nothing can be screwed onto it.",
  mount_field_too_wide: (p) =>
    `The lens sees ${shown(p.field_deg)} degrees: no flat filter in front of it is wide enough. The filter goes behind the lens.`,
  mount_hits_dome: (p) =>
    `With the entrance pupil in the dome's centre, rim and dome would overlap by ${shown(-p.clearance_mm)} mm: there is no room for this filter behind this dome.`,
  mount_near_dome: (p) =>
    `Only about ${shown(p.clearance_mm)} mm stay free between rim and dome: try it slowly by hand before the housing is closed.`,
  mount_not_before_dome: () =>
    "A flat filter does not seat on a dome, and one wide enough for its view would be huge: with a dome the filter goes inside.",
  mount_port_without_thread: () =>
    "No thread is known on the outside of this port: a filter cannot be screwed onto it.",
  mount_flip_seat_unknown: () =>
    "No thread is known on the outside of this port: see that the flip holder clamps onto it by itself, or give `port_thread_mm` or `port_outer_diameter_mm`.",
  mount_clip_seat_unknown: () =>
    "How wide the port is outside is not known, so whether a clip grips it is not either: measure it, or give `port_outer_diameter_mm`.",
  mount_frame_for_housing: () =>
    "The frame has to be made for this camera's dive housing: one for the bare camera does not go over it. Try it before the trip.",
  mount_holder_too_small: (p) =>
    `The holder is ${shown(p.inner_mm, 1)} mm wide inside and the port ${shown(p.port_mm, 1)} mm outside: it does not go over.`,
  mount_holder_too_large: (p) =>
    `The holder is ${shown(p.inner_mm, 1)} mm wide inside and the port ${shown(p.port_mm, 1)} mm outside: it finds no grip.`,
  mount_holder_loose: (p) =>
    `The holder is ${shown(p.inner_mm - p.port_mm, 1)} mm wider than the port: line it with rubber until it grips, and tether it.`,
  mount_holder_to_ask_for: (p) =>
    `Ask for a holder for a port that measures ${shown(p.port_mm, 1)} mm outside.`,
  mount_dome_room_unknown: () =>
    "The dome's radius is not given, so the room between rim and dome is not known: try it slowly by hand, or give `dome_radius_mm`.",
  mount_not_an_action_camera: () =>
    "Frames are made for action cameras and their housings, not for the port of a larger camera.",
  mount_lens_stays_on: () => "The lens of this camera does not come off: nothing can be put behind it.",
  mount_fixed_for_dive: () =>
    "The filter cannot be changed at depth in this place: choose one that serves the whole range of depths.",
  mount_other_change: (p) =>
    `In this place the filter is changed by ${CHANGES[p.allowed]}, not in the way that was asked for.`,

  rings_not_needed: (p) =>
    `Filter and seat share the thread of ${shown(p.thread_mm, 1)} mm: no ring is needed.`,
  rings_filter_thread_assumed: (p) =>
    `No thread of a filter is given: one of ${shown(p.thread_mm, 1)} mm, as the seat has it, is assumed.`,
  rings_close: (p) =>
    `The rings owned lead to the filter: ${p.rings.map(ring).join(", then ")}. Together they move it ${shown(p.thickness_mm, 1)} mm forward. No other chain of them narrows less.`,
  rings_missing: (p) =>
    `The rings owned do not lead from ${shown(p.from_mm, 1)} to ${shown(p.to_mm, 1)} mm. Missing: one ring that screws into ${shown(p.from_mm, 1)} mm and offers ${shown(p.to_mm, 1)} mm. Figures of the corners take it to be 3 mm thick.`,
  rings_too_thick: (p) =>
    `The rings owned lead from ${shown(p.from_mm, 1)} to ${shown(p.to_mm, 1)} mm, but cut the corners off. Better one thin ring that screws into ${shown(p.from_mm, 1)} mm and offers ${shown(p.to_mm, 1)} mm; figures of the corners take it to be 3 mm thick.`,
  rings_wrong_way: (p) =>
    `The ring ${p.id} joins the same sizes the other way round (into ${shown(p.from_mm, 1)}, offering ${shown(p.to_mm, 1)} mm): rings cannot be turned about.`,
  rings_narrow: (p) =>
    `The chain narrows to ${shown(p.narrowest_mm, 1)} mm on its way, less than lens and filter have, and takes light from the corners. One ring from ${shown(p.from_mm, 1)} to ${shown(p.to_mm, 1)} mm would be better.`,
  rings_step_down: (p) =>
    `A filter of ${shown(p.to_mm, 1)} mm on a seat of ${shown(p.from_mm, 1)} mm has to be stepped down, which takes from the corners; a filter as wide as the seat, or wider, is the better buy.`,

  corners_clear: (p) =>
    `Filter and rings leave ${shown(p.light_percent)} % of the light in the corner: they are clear to ${shown(p.clear_half_deg)} degrees from the axis, and the corner lies at ${shown(p.corner_half_deg)}.`,
  corners_slight: (p) =>
    `Filter and rings leave ${shown(p.light_percent)} % of the light in the very corner; to ${shown(p.clear_half_deg)} degrees from the axis all is clear. That hardly shows.`,
  corners_dark: (p) =>
    `Filter and rings darken the corners: ${shown(p.light_percent)} % of the light is left there. All is clear to ${shown(p.clear_half_deg)} degrees from the axis, and the corner lies at ${shown(p.corner_half_deg)}.`,
  corners_black: (p) =>
    `Filter and rings are likely to cut the corners off: from the axis all is clear to ${shown(p.clear_half_deg)} degrees only, and the corner lies at ${shown(p.corner_half_deg)}. It takes a clear diameter of ${shown(p.clear_diameter_needed_mm)} mm.`,
  corners_close: (p) =>
    `It is close: should the entrance pupil lie farther in than is likely, only ${shown(p.least_light_percent)} % would be left in the corner. A clear diameter of ${shown(p.clear_diameter_safe_mm)} mm would be safe then too.`,
  corners_unknown: (p) =>
    `The filter's clear diameter is not given: about ${shown(p.clear_diameter_needed_mm)} mm take nothing from the corners.`,
  corners_test: () =>
    "How far in the entrance pupil lies is seldom published and moves with the angle. A picture of a white wall at the widest setting and the smallest aperture shows what is true.",
  pupil_distance_assumed: (p) =>
    `The entrance pupil is assumed ${shown(p.distance_mm)} mm behind where the filter sits, give or take ${shown(p.spread_percent)} %, ${PUPIL_ASSUMED_FROM[p.from]}.`,
  format_assumed: (p) =>
    `The picture's diagonal on the sensor is assumed to be ${shown(p.diagonal_mm, 1)} mm: give sensor_diagonal_mm to be surer of the corners.`,

  flat_port_narrows: (p) =>
    `The flat window turns ${shown(p.field_in_air_deg)} degrees in air into ${shown(p.field_in_water_deg)} in water: things appear ${shown(p.enlarged_percent)} % larger and at three quarters of their distance.`,
  dome_keeps_field: () => "With the entrance pupil in its centre the dome keeps the lens's field of view.",
  dome_brings_near: (p) =>
    `Behind this dome the farthest things appear ${shown(p.from_vertex_mm / 10)} cm in front of the glass, ${shown(p.from_centre_mm / 10)} cm from its centre: the lens has to focus that near.`,

  sheet_shifts_focus: (p) =>
    `The sheet moves the image ${shown(p.shift_mm, 3)} mm back. The camera's autofocus makes up for it; left at a mark on the scale the blur is ${shown(p.blur_mm, 4)} mm, where ${shown(p.allowed_mm, 3)} mm is usually allowed.`,
  sheet_all_in_reach: (p) =>
    `Infinity is not lost: nothing behind this dome appears farther than ${shown(p.from_centre_mm / 10)} cm, well within what the lens can focus with the sheet.`,
  sheet_infinity_hidden: (p) =>
    `A lens that stops at infinity focuses to ${shown(p.farthest_m, 1)} m with the sheet; what lies beyond is blurred less than depth of field allows.`,
  sheet_infinity_lost: (p) =>
    `A lens that stops at infinity focuses only to ${shown(p.farthest_m, 1)} m with the sheet, and beyond it blurs by ${shown(p.blur_mm, 3)} mm: stop down, take a thinner sheet, or make sure that the lens turns past infinity.`,
  sheet_focus_unknown: () =>
    "How far the lens has to focus behind this dome is not known, so whether the sheet lets it is not either: give `dome_radius_mm`.",
  sheet_measure_opening: () =>
    "Measure the opening behind the lens, or the slot of the holder, to get the size to cut.",
  sheet_cut: (p) => `Cut the sheet to ${shown(p.width_mm, 1)} by ${shown(p.height_mm, 1)} mm.`,
};

const PUPIL_ASSUMED_FROM: Readonly<Record<PupilBasis, string>> = {
  thread: "as in lenses of this kind, which are built to take one ordinary filter",
  sensor: "guessed from the size of the picture on the sensor",
  window: "as close behind the window as small cameras have it",
};

const CHANGES = { flip: "swinging it on a hinge", clip_on: "taking it off and clipping it on" } as const;

const ring = ({ id, from_mm, to_mm }: Pick<StepRing, "id" | "from_mm" | "to_mm">): string =>
  `${id} (${from_mm} to ${to_mm} mm)`;

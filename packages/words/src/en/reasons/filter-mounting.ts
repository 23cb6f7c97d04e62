import type { FilterMountingReasons, PupilBasis, StepRing } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { distance, near, shown } from "../format.js";
import { mountingHolders } from "../mounting-holders.js";

/** Reasons on where a filter goes. */
export const filterMountingReasons: Texts<FilterMountingReasons, string> = {
  mount_asked_does_not_fit: (p) =>
    `As asked, ${mountingHolders[p.asked]} does not fit this camera. Use ${mountingHolders[p.instead]} instead.`,
  mount_nothing_fits: () =>
    "As things stand no holder fits; the reasons below say what would have to change.",
  mount_no_room_for_two: () =>
    "The ND stays ashore: with the colour filter there is no room for it, or the corners go dark.",

  mount_on_lens: () =>
    "The filter screws onto the lens inside the housing: in air, safe from knocks, but fixed for the whole dive.",
  mount_outside_fixed: () =>
    "The filter sits in the water in front of the flat window and stays on for the dive.",
  mount_outside_changed: () =>
    "The filter sits in the water in front of the flat window, where you can swing it away, or take it off and put it back, at depth.",
  mount_over_window: () =>
    "A frame made for this camera holds the filter over its window, close to the lens.",
  mount_behind_lens: () =>
    "A sheet behind the lens needs no room in front: it works with bulging lenses and any dome, and has no rim to darken the corners. It stays on for the whole dive.",

  mount_window_is_port: () => "This camera's own window is its port: you cannot get at a lens inside.",
  mount_front_bulges: () =>
    "A fisheye's front element bulges and leaves no room for a thread: the filter goes behind the lens.",
  mount_lens_without_thread: () => "The lens has no filter thread: nothing can be screwed onto it.",
  mount_field_too_wide: (p) =>
    `The lens sees ${shown(p.field_deg)} degrees: no flat filter in front of it is wide enough. The filter goes behind the lens.`,
  mount_hits_dome: (p) =>
    `With the entrance pupil in the dome's centre, rim and dome would overlap by ${shown(-p.clearance_mm)} mm: there is no room for this filter behind this dome.`,
  mount_near_dome: (p) =>
    `Only about ${shown(p.clearance_mm)} mm stay free between rim and dome: try it slowly by hand before the housing is closed.`,
  mount_hits_port: (p) =>
    `With the zoom at its longest the filter's rim would stand ${shown(-p.clearance_mm, 1)} mm into the port: there is no room for it on this lens.`,
  mount_near_port: (p) =>
    `Only ${shown(p.clearance_mm, 1)} mm stay free before the port with the zoom at its longest: try it slowly by hand before you close the housing.`,
  mount_zoom_room_unknown: (p) =>
    `The lens grows by ${shown(p.travel_mm, 1)} mm as it zooms. Whether the filter then touches the port, only \`lens_port_gap_mm\` or a try by hand can tell.`,
  mount_wet_lens_in_the_way: (p) =>
    `The ${WET_LENSES[p.wet_lens]} sits on the port where this holder would go. Take one of the two.`,
  mount_wet_lens_stacked: (p) =>
    p.wet_lens === "wide"
      ? `Between port and wide wet lens, the filter moves that lens ${shown(p.thickness_mm, 1)} mm away from the port, which darkens the corners and takes from its sharpness. Try it with a picture of a wall, in water.`
      : `Screw the filter onto the port first and the close-up lens onto the filter. It moves that lens ${shown(p.thickness_mm, 1)} mm forward: check that the threads hold the weight of both.`,
  wet_lens_not_on_dome: () => "A wet lens belongs on a flat port: this takes the dome to be used without it.",
  ghosts_inside: (p) =>
    `Filter and lens mirror bright lights between them, at least ${shown(p.in_air_stops)} stops fainter: a ghost may show of the sun or of a light in the picture. A coated filter makes it fainter.`,
  ghosts_outside: (p) =>
    `With water between filter and window, ghosts of bright lights are ${shown(p.in_water_stops)} stops fainter and do not show. With air in between they are only ${shown(p.in_air_stops)} stops fainter.`,
  filter_weighs: (p) =>
    `A filter of this size in ${MATERIALS[p.material]} weighs about ${shown(p.weight_g)} g in the water, without its holder.`,
  mount_not_before_dome: () =>
    "A flat filter does not sit on a dome, and one wide enough for its view would be huge. With a dome, the filter goes inside.",
  mount_port_without_thread: () =>
    "This port has no known thread on the outside, so you cannot screw a filter onto it.",
  mount_flip_seat_unknown: () =>
    "This port has no known thread on the outside. Make sure that the flip holder clamps onto it, or give `port_thread_mm` or `port_outer_diameter_mm`.",
  mount_clip_seat_unknown: () =>
    "Without the outer diameter of the port, nobody can say whether a clip grips it. Measure it and give `port_outer_diameter_mm`.",
  mount_frame_for_housing: () =>
    "The frame has to be made for this camera's dive housing: one for the bare camera does not fit over it. Try it before the trip.",
  mount_holder_too_small: (p) =>
    `The holder is ${shown(p.inner_mm, 1)} mm wide inside and the port ${shown(p.port_mm, 1)} mm outside: it does not fit over it.`,
  mount_holder_too_large: (p) =>
    `The holder is ${shown(p.inner_mm, 1)} mm wide inside and the port ${shown(p.port_mm, 1)} mm outside: it has no grip.`,
  mount_holder_loose: (p) =>
    `The holder is ${shown(p.inner_mm - p.port_mm, 1)} mm wider than the port: line it with rubber until it grips, and tether it.`,
  mount_holder_to_ask_for: (p) =>
    `Ask for a holder for a port that measures ${shown(p.port_mm, 1)} mm outside.`,
  mount_dome_room_unknown: () =>
    "Without the dome's radius, the room between rim and dome is unknown. Try it slowly by hand, or give `dome_radius_mm`.",
  mount_not_an_action_camera: () =>
    "Frames are made for action cameras and their housings, not for the port of a larger camera.",
  mount_lens_stays_on: () => "The lens of this camera does not come off: nothing can be put behind it.",
  mount_fixed_for_dive: () =>
    "You cannot change the filter at depth there: choose one that serves the whole range of depths.",
  mount_other_change: (p) =>
    `There you change the filter by ${CHANGES[p.allowed]}, not the way you asked for.`,

  rings_not_needed: (p) =>
    `Filter and mount both have a ${shown(p.thread_mm, 1)} mm thread: you need no ring.`,
  rings_filter_thread_assumed: (p) =>
    `You gave no filter thread, so this assumes ${shown(p.thread_mm, 1)} mm, the same as the mount.`,
  rings_close: (p) =>
    `Your step rings lead to the filter: ${p.rings.map(ring).join(", then ")}. Together they move it ${shown(p.thickness_mm, 1)} mm forward. No other chain of them is wider.`,
  rings_missing: (p) =>
    `Your step rings do not get from ${shown(p.from_mm, 1)} to ${shown(p.to_mm, 1)} mm. Get one ring that screws into ${shown(p.from_mm, 1)} mm and takes ${shown(p.to_mm, 1)} mm. The corner figures assume that it is 3 mm thick.`,
  rings_too_thick: (p) =>
    `Your step rings get from ${shown(p.from_mm, 1)} to ${shown(p.to_mm, 1)} mm, but cut off the corners. Get one thin ring that screws into ${shown(p.from_mm, 1)} mm and takes ${shown(p.to_mm, 1)} mm. The corner figures assume that it is 3 mm thick.`,
  rings_wrong_way: (p) =>
    `The ring ${p.id} joins the same sizes the other way round (it screws into ${shown(p.from_mm, 1)} mm and takes ${shown(p.to_mm, 1)} mm): you cannot turn a ring around.`,
  rings_narrow: (p) =>
    `The chain narrows to ${shown(p.narrowest_mm, 1)} mm, less than lens and filter, and darkens the corners. One ring from ${shown(p.from_mm, 1)} to ${shown(p.to_mm, 1)} mm would be better.`,
  rings_step_down: (p) =>
    `A filter of ${shown(p.to_mm, 1)} mm on a ${shown(p.from_mm, 1)} mm mount has to be stepped down, which darkens the corners. A filter as wide as the mount, or wider, is the better buy.`,

  corners_clear: (p) =>
    `Filter and rings leave ${shown(p.light_percent)} % of the light in the corner: the view is clear up to ${shown(p.clear_half_deg)} degrees from the axis, and the corner lies at ${shown(p.corner_half_deg)}.`,
  corners_slight: (p) =>
    `Filter and rings leave ${shown(p.light_percent)} % of the light in the very corner; up to ${shown(p.clear_half_deg)} degrees from the axis all is clear. That hardly shows.`,
  corners_dark: (p) =>
    `Filter and rings darken the corners: ${shown(p.light_percent)} % of the light is left there. All is clear up to ${shown(p.clear_half_deg)} degrees from the axis; the corner lies at ${shown(p.corner_half_deg)}.`,
  corners_black: (p) =>
    `Filter and rings are likely to cut off the corners: the view is clear only up to ${shown(p.clear_half_deg)} degrees from the axis, and the corner lies at ${shown(p.corner_half_deg)}. You need a clear diameter of ${shown(p.clear_diameter_needed_mm)} mm.`,
  corners_close: (p) =>
    `It is close: if the entrance pupil lies farther back than is likely, only ${shown(p.least_light_percent)} % of the light is left in the corner. A clear diameter of ${shown(p.clear_diameter_safe_mm)} mm is wide enough even then.`,
  corners_unknown: (p) =>
    `You gave no clear diameter of the filter: about ${shown(p.clear_diameter_needed_mm)} mm leaves the corners clear.`,
  corners_test: () =>
    "Makers seldom publish where the entrance pupil lies, and it moves with the angle. Take a picture of a white wall at the widest setting and the smallest aperture: it shows what really happens.",
  pupil_distance_assumed: (p) =>
    `This assumes that the entrance pupil lies ${shown(p.distance_mm)} mm behind the filter, give or take ${shown(p.spread_percent)} %, ${PUPIL_ASSUMED_FROM[p.from]}.`,
  format_assumed: (p) =>
    `This assumes a sensor diagonal of ${shown(p.diagonal_mm, 1)} mm: give sensor_diagonal_mm to be surer of the corners.`,

  flat_port_narrows: (p) =>
    `The flat window turns ${shown(p.field_in_air_deg)} degrees in air into ${shown(p.field_in_water_deg)} in water: things appear ${shown(p.enlarged_percent)} % larger and at three quarters of their distance.`,
  dome_keeps_field: () => "With the lens's entrance pupil at its centre, the dome keeps the field of view.",
  dome_brings_near: (p, u) =>
    `Behind this dome the farthest things appear ${near(p.from_vertex_mm, u)} in front of the glass, ${near(p.from_centre_mm, u)} from its centre: the lens has to focus that close.`,

  sheet_shifts_focus: (p) =>
    `The sheet moves the image ${shown(p.shift_mm, 3)} mm back. Autofocus makes up for it. If you focus by the scale, the blur is ${shown(p.blur_mm, 4)} mm, where ${shown(p.allowed_mm, 3)} mm is usually allowed.`,
  sheet_all_in_reach: (p, u) =>
    `You lose nothing at infinity: behind this dome nothing appears farther than ${near(p.from_centre_mm, u)}, well within what the lens can focus with the sheet.`,
  sheet_infinity_hidden: (p, u) =>
    `A lens that stops at infinity focuses to ${distance(p.farthest_m, u)} with the sheet; beyond that the blur stays within depth of field.`,
  sheet_infinity_lost: (p, u) =>
    `A lens that stops at infinity focuses only to ${distance(p.farthest_m, u)} with the sheet, and beyond it blurs by ${shown(p.blur_mm, 3)} mm: stop down, take a thinner sheet, or make sure that the lens turns past infinity.`,
  sheet_focus_unknown: () =>
    "Without the dome's radius, nobody can say whether the lens still focuses with the sheet: give `dome_radius_mm`.",
  sheet_measure_opening: () =>
    "Measure the opening behind the lens, or the slot of the holder, to get the size to cut.",
  sheet_cut: (p) => `Cut the sheet to ${shown(p.width_mm, 1)} by ${shown(p.height_mm, 1)} mm.`,
};

const PUPIL_ASSUMED_FROM: Readonly<Record<PupilBasis, string>> = {
  thread: "as in lenses of this kind, which are built for one ordinary filter",
  sensor: "guessed from the size of the picture on the sensor",
  window: "close behind the window, as in small cameras",
};

const WET_LENSES = { wide: "wide wet lens", close_up: "close-up wet lens" } as const;

const MATERIALS = { glass: "glass", resin: "resin" } as const;

const CHANGES = { flip: "swinging it on a hinge", clip_on: "taking it off and clipping it on" } as const;

const ring = ({ id, from_mm, to_mm }: Pick<StepRing, "id" | "from_mm" | "to_mm">): string =>
  `${id} (${from_mm} to ${to_mm} mm)`;

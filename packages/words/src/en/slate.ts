import type { NamedFilter } from "@sunfathom/planner";
import type { SlateTexts } from "../slate-texts.js";
import { capital } from "./capital.js";
import { dialIso, dialShutter, setting, settings } from "./dial.js";
import { between, densityOf, depth, depths, distance, kelvin, shown, span, stops } from "./format.js";
import { spoken } from "./list.js";
import { mountingHolders } from "./mounting-holders.js";

const short = ({ kind, density, id, shelf }: NamedFilter): string =>
  id ??
  (kind === "none"
    ? "no filter"
    : `${kind} filter${density === undefined ? "" : ` ${densityOf(shelf?.from ?? density)}`}`);
const name = (filter: NamedFilter): string => capital(short(filter));
const off = ({ instead_of }: { instead_of?: NamedFilter }): string =>
  instead_of ? `${name(instead_of)} off. ` : "";
const noFilter = (p: { instead_of?: NamedFilter }): string => `${off(p)}No colour filter.`;

export const slate: SlateTexts = {
  title: ({ min_depth_m, max_depth_m }, u) => `Light and colour ${between(min_depth_m, max_depth_m, u)}`,
  parts: { before: "Before", start: "Start", down: "Down", up: "Up", after: "After" },
  filter: ({ filter }) =>
    filter.kind === "none"
      ? ["none", "colour filter"]
      : filter.density === undefined
        ? [filter.id ?? filter.kind, `${filter.kind} filter`]
        : [densityOf(filter.shelf?.from ?? filter.density), `${filter.id ?? filter.kind} filter`],
  first_balance: ({ depth_m }, u) => [depth(depth_m, u), "first white balance"],
  starting_iso: ({ iso }) => [`ISO ${dialIso(iso)}`, "to start with"],
  at: ({ depth_m, text }, u) => `${depth(depth_m, u)}: ${text}`,
  steps: {
    mount_filter: (p) => `${off(p)}${name(p.filter)} on, clean.`,
    keep_filter: (p) => `${name(p.filter)} stays on.`,
    carry_filter: (p, u) =>
      `${off(p)}${name(p.filter)} for ${span(p.from_m, p.to_m, u)}${p.from_start ? ", on at the start" : ""}.`,
    no_filter: noFilter,
    no_filter_for_lamps: noFilter,
    lamps_would_help: () => "Take video lights if you have them.",
    no_filter_fits: (p) => `${off(p)}No colour filter: none can be mounted.`,
    fit_filter: (p) => `Mount: ${mountingHolders[p.holder]}.`,
    neutral_density: (p) => `ND ${densityOf(p.density)} on${p.mount === "none" ? "" : " at the start"}.`,
    set_frame: (p) => `${dialShutter(p.exposure.shutter_s)}, all manual, ${shown(p.bits)} bits.`,
    filter_lamps: (p) => `${off(p)}${name(p.filter)} on each video light.`,
    keep_lamp_filters: (p) => `${name(p.filter)} stays on the video lights.`,
    bare_lamps: (p) => `${name(p.filter)} off the video lights.`,
    start_exposure: (p) => `${setting(p)}. Check highlights.`,
    balance_on_card: (p) =>
      p.far === undefined
        ? "White balance on the card, in front of the subject."
        : "White balance on the card at arm's length; do not go after the subject.",
    set_modes: (p) =>
      `Exposure ${p.exposure_mode === "auto" ? "automatic" : `manual, ${dialShutter(p.exposure.shutter_s)}`}; white balance ${{ auto: "automatic", kelvin: "in kelvin", card: "on a card" }[p.white_balance_mode]}.`,
    exposure_by_itself: (p) =>
      `Exposure automatic${Math.abs(p.stops) < 1 / 3 ? "" : `, compensation ${p.stops > 0 ? "+" : "-"}${stops(Math.abs(p.stops))}`}. Check highlights.`,
    balance_by_itself: () => "White balance automatic: look at a picture.",
    balance_in_kelvin: (p) => `White balance ${kelvin(p.cct_K)} K.`,
    balance_on_card_in_lamp_light: (p) =>
      `Video lights on: white balance on the card at the subject${p.cct_K === undefined ? "" : `, or ${kelvin(p.cct_K)} K`}.`,
    balance_again: (p, u) =>
      `${p.exposed ? "Exposure, then white balance" : "White balance again"} at ${depths(p.depths_m, u)}.`,
    filter_in: (p) => `filter in, ${setting(p)}, white balance.`,
    filter_out: (p) => `filter out, ${setting(p)}, white balance.`,
    neutral_off: (p) => `ND off, ${setting(p)}.`,
    neutral_on: (p) => `ND on, ${setting(p)}.`,
    deep_exposure: (p, u) => `at ${depth(p.to_m, u)} ${setting(p)}.`,
    shallow_exposure: (p, u) => `at ${depth(p.to_m, u)} ${setting(p)}.`,
    too_dark: (p) => `${settings(p)}, still ${stops(p.shortfall_stops)} too dark.`,
    come_close: () => "come closer first.",
    lamps_off: () => "Video lights off, on the rig.",
    lamps_for_subject: () => "Close-ups only: no filter, video lights on, white balance in their light.",
    lamps_from: (p, u) => `Video lights from ${depth(p.depth_m, u)}, with a new white balance.`,
    lamps_on: (p, u) =>
      `Video lights on in the water, ${distance(p.distance_m, u)} from the subject${p.wide ? ", held wide" : ""}.`,
    lamps_lead: (p) => `Video lights on, subject in their light${p.haze ? ", lights held wide" : ""}.`,
    lamps_hardly_show: (p) => (p.haze ? "Video lights off." : "Video lights may stay on."),
    lamps_with_daylight: (p) => `Video lights stay on at that distance${p.haze ? ", lights held wide" : ""}.`,
    lamps_reach: (p, u) =>
      `Video lights carry ${depth(p.dark_m, u)}, ${p.daylight ? "then daylight alone" : "then black"}.`,
    lamps_only: (p) => `Keep that distance to the subject${p.haze ? ", lights held wide" : ""}.`,
    mixing_zone: (p, u) => `${span(p.from_m, p.to_m, u)}: video lights or daylight, not both.`,
    grade_red: (p, u) =>
      `Expect good red in pictures to ${depth(p.acceptable_m, u)}${p.gone_m === undefined ? "" : `, none below ${depth(p.gone_m, u)}`}.`,
    grade_no_red: (p, u) =>
      `Expect weak red in pictures${p.gone_m === undefined ? "" : `, none below ${depth(p.gone_m, u)}`}.`,
    lamps_off_before_air: () => "Video lights off before they leave the water; keep a dive light on.",
    rinse: () => "Rinse and dry before you open anything. Check the footage.",
  },
  take: {
    lens_filter: (p) => short(p.filter),
    neutral_density: (p) => `ND ${densityOf(p.density)}`,
    lamp_filters: (p) => `${short(p.filter)} for each light`,
    lamp_filters_lacking: (p) => `${p.kind} filter ${densityOf(p.density)} for each light`,
    lamp: () => "video lights",
    filter_mount: (p) => (p.mount === "flip" ? "flip mount" : "clip mount"),
    dive_light: () => "dive light",
    card: () => "card",
    spares: () => "battery, memory card, O-rings",
    holder: (p) => mountingHolders[p.holder],
    rings: (p) => `rings ${p.rings.join(", ")}`,
    ring_lacking: (p) => `step ring ${shown(p.from_mm)} to ${shown(p.to_mm)} mm`,
  },
  taken: ({ items }) => `Take ${spoken(items)}.`,
  cautions: {
    ascent_first: "Your ascent and safety stop come first.",
    not_a_dive_planner: "This is light and colour: training and local rules decide the dive.",
    overhead_by_training:
      "Caves, wrecks, ice: only with training, guide and backup lights; filming lights are none.",
    hover_to_balance: "Hover to set anything, hands off the reef; buddy, depth and gas come first.",
    closer_under_control: "Closer only under control, touch nothing.",
    lamps_in_water_only: "Video lights on in water only: in air they overheat and burn.",
    lamps_not_into_eyes: "Never shine them into eyes.",
    lamps_stay_on_rig: "Lights and batteries stay on the rig: trim.",
    batteries_by_maker:
      "Batteries by the maker's instructions: none damaged or flooded, none charged unattended.",
    filter_on_dry_land: "Change a filter inside the housing or behind the lens on dry land only.",
    filter_flip_practised: "Practise the filter change at the surface first.",
    mount_makers_instructions: "The makers' instructions say what lens and housing take.",
    mount_sensor_dust: "Keep dust, sheet and tape off sensor, contacts, mount and shutter.",
    mount_flat_port_edges: "A flat port smears the edges of a wide field.",
  },
  more: ({ count }) => `${shown(count)} more in the plan.`,
  description: ({ min_depth_m, max_depth_m }, u) =>
    `A slate for filming ${between(min_depth_m, max_depth_m, u)}: three numbers to remember, what to do before the dive, at the start, going down, coming up and afterwards, and the cautions.`,
};

import type { FilterHolder, TripAdviceReasons, TripPlanCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import type { TripSayings } from "../trip-texts.js";
import { filterName } from "./filter-name.js";
import { depth, howOften, shown, stops } from "./format.js";
import { spoken } from "./list.js";
import { summary } from "./summary.js";

/** Why a shared shelf is handed out as it is. */
export const tripAdviceReasons: Texts<TripAdviceReasons, string> = {
  trip_handed_out: (p) =>
    `${counted(p.pieces, "filter", "filters")} for ${counted(p.guests, "guest", "guests")}: on each dive the guest who would be worst off is served as well as can be, then the next one, and so on. Ties go by the guests' ids. A filter counts where it fits the camera and gains enough to be worth mounting.`,
  trip_shelf_short: (p) =>
    `No filter is left for a guest whom one would help: ${howOften(p.times)} on this trip.`,
  trip_nothing_fits: (p) =>
    `No filter of the shelf fits the ${p.guests.length === 1 ? "camera" : "cameras"} of ${spoken(p.guests)} with the rings at hand. If a ring would help, \`rings_to_get\` names it.`,
  trip_with_care: (p) =>
    `On the ${p.guests.length === 1 ? "camera" : "cameras"} of ${spoken(p.guests)} a filter fits, but asks for care: \`filter-mounting\` says for what.`,
  trip_fit_not_asked: (p) =>
    `${counted(p.guests, "camera comes", "cameras come")} without \`port_kind\` and \`lens_kind\`: every filter is taken to fit.`,
  trip_thread_assumed: (p) =>
    `No thread is given for ${spoken(p.pieces)}: the thread of each lens or port is assumed. Give \`filter_thread_mm\` to know what fits.`,
  trip_sun_assumed: (p) =>
    `${spoken(p.dives)}: neither a place nor a height of the sun is given, so the sun is taken to stand at ${shown(p.elevation_deg)} degrees.`,
  trip_no_daylight: (p) =>
    `${spoken(p.dives)}: there is no daylight, so no filter is handed out. Ask \`dive-advice\` with your video lights.`,
  trip_stays_on: () =>
    "Filters are taken to stay on for the whole dive, and colour errors are the mean over both ends and the middle of the depths. If you can change at depth, ask `dive-advice` about that dive.",
  trip_spread_shared: (p) =>
    `How sure the colour errors ${p.with_filter ? "with a filter" : "without a filter"} are was worked out for ${p.guest} on ${p.dive}, where the largest is left, and is carried over to the others.`,
};

const counted = (count: number, one: string, other: string): string =>
  `${count} ${count === 1 ? one : other}`;

const HELD: Readonly<Record<FilterHolder, string>> = {
  screw_on_lens: "screwed onto the lens",
  screw_on_port: "screwed onto the port",
  flip: "in a flip holder on the port",
  clip_on: "clipped onto the port",
  rear_sheet: "as a sheet behind the lens",
  action_camera: "in its frame over the camera's window",
};

const withRings = (rings: readonly string[]): string =>
  rings.length === 0 ? "" : ` with step ${rings.length === 1 ? "ring" : "rings"} ${spoken(rings)}`;

/** A guest's plan for a dive, in a few sentences. */
export const tripPlan: Texts<TripPlanCodes, string> = {
  ...summary,
  trip_mount: (p) =>
    `Mount ${filterName(p.filter)}${p.from === "shelf" ? " from the shelf" : ""}${p.holder === undefined ? "" : `, ${HELD[p.holder]}`}${withRings(p.rings)}.`,
  trip_too_bright: (p, u) =>
    `At ${depth(p.depth_m, u)} it is still ${stops(p.excess_stops)} too bright: use a shorter exposure time or an ND.`,
  trip_without_daylight: () => "There is no daylight: leave colour filters off and film with video lights.",
};

/** Labels of crates, and what calendars say. */
export const tripSays: Texts<TripSayings, string> = {
  trip_crate: ({ guest, pieces }) =>
    pieces.length === 0
      ? `${guest}: no filters.`
      : `${guest}: ${pieces.map((p) => `${p.piece}${withRings(p.rings)} for ${spoken(p.dives)}`).join("; ")}.`,
  trip_event: ({ dive, piece }) => `${dive}: ${piece ?? "no filter"}`,
  trip_uses: ({ guest, piece, rings }) => `${guest}: ${piece ?? "no filter"}${withRings(rings)}`,
};

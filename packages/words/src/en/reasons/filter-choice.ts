import type { FilterChoiceReasons, Finish } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialShutter, settings } from "../dial.js";
import { filterName } from "../filter-name.js";
import { shown } from "../format.js";
import { filterMainReasons } from "./filter-main.js";

/** By what the picture is judged. */
const judgedBy: Record<Finish, string> = {
  in_camera:
    "Judged by the picture as the camera stores it, white balance as set and nothing done afterwards.",
  basic_edit:
    "Judged by the picture after a basic edit: balance, exposure, black level and saturation, one slider each.",
  matched:
    "Judged by the picture after a grade profiled on a colour chart that was filmed in the same light.",
};

const otherwise: Record<Finish, string> = {
  in_camera: "Straight from the camera",
  basic_edit: "With a basic edit afterwards",
  matched: "With a grade profiled on a colour chart",
};

/** What the exposure is set by, and what becomes of it at its settings. */
const carded: Record<FilterChoiceReasons["light_to_spare"]["metering"], { what: string; right: string }> = {
  white_card: { what: "a white card", right: "fills the scale" },
  grey_card: { what: "a grey card", right: "is exposed right" },
  picture: { what: "the picture", right: "is exposed right on the whole" },
};

/** Reasons on the choice of a filter. */
export const filterChoiceReasons: Texts<FilterChoiceReasons, string> = {
  ...filterMainReasons,
  finish_judged: (p) => judgedBy[p.finish],
  finish_turns_choice: (p) =>
    p.error > p.advised_error
      ? `${otherwise[p.finish]}, no filter would do: it leaves a colour error of ${shown(p.error, 1)}, and ${shown(p.advised_error, 1)} with the advised one is too little of a gain to mount it.`
      : `${otherwise[p.finish]}, ${p.filter.kind === "none" ? "no filter" : filterName(p.filter)} would be the better choice: it leaves a colour error of ${shown(p.error, 1)}, the advised choice ${shown(p.advised_error, 1)}.`,
  denser_gains_nothing_below: (p) =>
    `Down to ${shown(p.depth_m, 1)} m the best density rises, to ${shown(p.density, 2)}; below that a weaker filter, or none, is better, since light or red itself runs out.`,
  filter_brings_balance_into_reach: (p) =>
    `Without a filter the camera cannot balance white from ${shown(p.depth_m, 1)} m on (${shown(p.residual_stops, 1)} stops out of reach at ${shown(p.deepest_m, 1)} m). The filter holds back the rest of the light, so that red can be exposed${p.reach_to_m > 0 ? `, and white balanced${p.reach_from_m < p.reach_to_m ? ` from ${shown(p.reach_from_m, 1)} to ${shown(p.reach_to_m, 1)} m` : ` at ${shown(p.reach_to_m, 1)} m`}` : ", and brings the balance nearer"}.`,
  balance_out_of_reach: (p) =>
    `From ${shown(p.depth_m, 1)} m on the camera cannot balance white (${shown(p.residual_stops, 1)} stops out of reach at ${shown(p.deepest_m, 1)} m); what is left has to be graded afterwards.`,
  balance_in_reach_without: () => "The camera can balance white without a filter.",
  light_to_spare: (p) =>
    `There is light to spare: at ${shown(p.depth_m, 1)} m and without a filter ${carded[p.metering].what} ${carded[p.metering].right} at ${settings(p)}.`,
  light_is_too_much: (p) =>
    `At ${shown(p.depth_m, 1)} m and without a filter ${carded[p.metering].what} is ${shown(p.excess_stops, 1)} stops too bright at ${settings(p)}, the least that the camera is allowed. Allow a smaller aperture, or use neutral density ${shown(p.density, 1)}.`,
  colour_filter_as_neutral: () =>
    "Against clipping a colour filter would do only what a neutral one does, which is no reason to mount it.",
  light_has_run_out: (p) =>
    p.short_stops > 0.05
      ? `Light has run out: at ${shown(p.depth_m, 1)} m ${carded[p.metering].what} stays ${shown(p.short_stops, 1)} stops too dark at ${settings(p)} even without a filter, and any filter takes more away.`
      : `Light is short: at ${shown(p.depth_m, 1)} m and without a filter ${carded[p.metering].what} ${carded[p.metering].right} only at ${settings(p)}, so every stop that a filter takes is paid in noise.`,
  light_holds_density: (p) =>
    `Light runs out before colour does: with enough of it, ${filterName(p.wanted)} would serve better. At ${shown(p.depth_m, 1)} m the picture already needs ${settings(p)} and ${dialShutter(p.shutter_s)}, and what a denser filter takes is paid in noise. A slower frame rate or a faster lens buys density.`,
  filter_shape_assumed: () =>
    "Curves of filters are not standardised: the shapes used here are assumptions, and how much another one of the same name would change is part of the uncertainty.",
  filter_trade_rule_blue: () => "The trade mounts red in blue water from about 3 m down.",
  filter_trade_rule_green: () => "The trade mounts magenta in green water.",
};

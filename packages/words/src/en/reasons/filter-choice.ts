import type { FilterChoiceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialShutter, settings } from "../dial.js";
import { filterName } from "../filter-name.js";
import { shown } from "../format.js";
import { filterMainReasons } from "./filter-main.js";

/** Reasons on the choice of a filter. */
export const filterChoiceReasons: Texts<FilterChoiceReasons, string> = {
  ...filterMainReasons,
  denser_gains_nothing_below: (p) =>
    `Down to ${shown(p.depth_m, 1)} m the best density rises, to ${shown(p.density, 2)}; below that a weaker filter, or none, is better, since light or red itself runs out.`,
  filter_brings_balance_into_reach: (p) =>
    `Without a filter the camera cannot balance white from ${shown(p.depth_m, 1)} m on (${shown(p.residual_stops, 1)} stops out of reach at ${shown(p.deepest_m, 1)} m). The filter holds back the rest of the light, so that red can be exposed${p.reach_to_m > 0 ? `, and white balanced${p.reach_from_m < p.reach_to_m ? ` from ${shown(p.reach_from_m, 1)} to ${shown(p.reach_to_m, 1)} m` : ` at ${shown(p.reach_to_m, 1)} m`}` : ", and brings the balance nearer"}.`,
  balance_out_of_reach: (p) =>
    `From ${shown(p.depth_m, 1)} m on the camera cannot balance white (${shown(p.residual_stops, 1)} stops out of reach at ${shown(p.deepest_m, 1)} m); what is left has to be graded afterwards.`,
  balance_in_reach_without: () => "The camera can balance white without a filter.",
  light_to_spare: (p) =>
    `There is light to spare: at ${shown(p.depth_m, 1)} m and without a filter a white card fills the scale at ${settings(p)}.`,
  light_is_too_much: (p) =>
    `At ${shown(p.depth_m, 1)} m and without a filter a white card is ${shown(p.excess_stops, 1)} stops too bright at ${settings(p)}, the least that the camera is allowed, and clips. Allow a smaller aperture, or use neutral density ${shown(p.density, 1)}.`,
  colour_filter_as_neutral: () =>
    "Against clipping a colour filter would do only what a neutral one does, which is no reason to mount it.",
  light_has_run_out: (p) =>
    p.short_stops > 0.05
      ? `Light has run out: at ${shown(p.depth_m, 1)} m a white card stays ${shown(p.short_stops, 1)} stops under full scale at ${settings(p)} even without a filter, and any filter takes more away.`
      : `Light is short: at ${shown(p.depth_m, 1)} m and without a filter a white card fills the scale only at ${settings(p)}, so every stop that a filter takes is paid in noise.`,
  light_holds_density: (p) =>
    `Light runs out before colour does: with enough of it, ${filterName(p.wanted)} would serve better. At ${shown(p.depth_m, 1)} m the picture already needs ${settings(p)} and ${dialShutter(p.shutter_s)}, and what a denser filter takes is paid in noise. A slower frame rate or a faster lens buys density.`,
  filter_shape_assumed: () =>
    "Curves of filters are not standardised: the shapes used here are assumptions, and how much another one of the same name would change is part of the uncertainty.",
  filter_trade_rule_blue: () => "The trade mounts red in blue water from about 3 m down.",
  filter_trade_rule_green: () => "The trade mounts magenta in green water.",
};

import type { FilterChoiceReasons, Finish } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialShutter, settings } from "../dial.js";
import { choiceOf, filterName } from "../filter-name.js";
import { between, densityOf, depth, neutral, stops, strength } from "../format.js";
import { filterMainReasons } from "./filter-main.js";

/** What the picture is judged by. */
const judgedBy: Record<Finish, string> = {
  in_camera: "This judges the picture straight from the camera, with its white balance and no edit.",
  basic_edit:
    "This judges the picture after a basic edit: balance, exposure, black level and saturation, one slider each.",
  matched: "This judges the picture after a grade profiled on a colour chart filmed in the same light.",
};

const otherwise: Record<Finish, string> = {
  in_camera: "Straight from the camera",
  basic_edit: "With a basic edit afterwards",
  matched: "With a grade profiled on a colour chart",
};

/** What the exposure is set by, and how bright that is at these settings. */
const carded: Record<FilterChoiceReasons["light_to_spare"]["metering"], { what: string; right: string }> = {
  white_card: { what: "a white card", right: "fills the scale" },
  grey_card: { what: "a grey card", right: "is exposed right" },
  picture: { what: "the whole picture", right: "is exposed right" },
};

/** Reasons on the choice of a filter. */
export const filterChoiceReasons: Texts<FilterChoiceReasons, string> = {
  ...filterMainReasons,
  finish_judged: (p) => judgedBy[p.finish],
  finish_turns_choice: (p) =>
    p.error > p.advised_error
      ? `${otherwise[p.finish]}, go without a filter: the advised one improves the colours by too little to mount it.`
      : `${otherwise[p.finish]}, ${choiceOf(p.filter)} would be the better choice: it leaves a ${strength(p.error)} colour error, less than the advised choice.`,
  denser_gains_nothing_below: (p, u) =>
    `Down to ${depth(p.depth_m, u)} the best density rises, to ${densityOf(p.density)}. Below that a weaker filter, or none, is better, because light or red itself runs out.`,
  filter_brings_balance_into_reach: (p, u) =>
    `Without a filter the camera cannot set a white balance from ${depth(p.depth_m, u)} down (it misses by ${stops(p.residual_stops)} at ${depth(p.deepest_m, u)}). The filter holds back green and blue, so you can expose for red${p.reach_from_m !== undefined && p.reach_to_m !== undefined ? `, and the camera can set a white balance ${between(p.reach_from_m, p.reach_to_m, u)}` : ", and the balance comes closer"}.`,
  balance_out_of_reach: (p, u) =>
    `From ${depth(p.depth_m, u)} down the camera cannot set a white balance (it misses by ${stops(p.residual_stops)} at ${depth(p.deepest_m, u)}). Take out the rest in the grade.`,
  balance_in_reach_without: () => "The camera can set a white balance without a filter.",
  light_to_spare: (p, u) =>
    `There is light to spare: at ${depth(p.depth_m, u)} without a filter, ${carded[p.metering].what} ${carded[p.metering].right} at ${settings(p)}.`,
  light_is_too_much: (p, u) =>
    `At ${depth(p.depth_m, u)} without a filter, ${carded[p.metering].what} is ${stops(p.excess_stops)} too bright at ${settings(p)}, the least exposure you allow the camera. Allow a smaller aperture, or use ${neutral(p.density)}.`,
  colour_filter_as_neutral: () =>
    "Against clipping, a colour filter would only do the job of an ND. That is no reason to mount one.",
  light_has_run_out: (p, u) =>
    p.short_stops > 0.05
      ? `It is too dark: at ${depth(p.depth_m, u)} ${carded[p.metering].what} stays ${stops(p.short_stops)} too dark at ${settings(p)} even without a filter, and any filter costs more light.`
      : `Light is short: at ${depth(p.depth_m, u)} without a filter, ${carded[p.metering].what} ${carded[p.metering].right} only at ${settings(p)}. You pay for every stop that a filter costs with noise.`,
  light_holds_density: (p, u) =>
    `Light runs out before colour does. With more of it, ${filterName(p.wanted)} would serve better. At ${depth(p.depth_m, u)} the picture already needs ${settings(p)} and ${dialShutter(p.shutter_s)}, and you pay for a denser filter with noise. A slower frame rate or a faster lens would let you mount one.`,
  densest_tried: (p) =>
    `The densest filter tried here has a density of ${densityOf(p.density)}, and at these depths it does best: an even denser one might do better. Few are made so dense; of weaker ones, the densest that you can get comes closest.`,
  filter_shape_assumed: () =>
    "No standard fixes the curve of a filter. The shapes here are assumptions; how much another filter of the same name would change the picture is part of the uncertainty.",
  filter_trade_rule_blue: (_, u) => `Common practice: red in blue water, from about ${depth(3, u)} down.`,
  filter_trade_rule_green: () => "Common practice: magenta in green water.",
};

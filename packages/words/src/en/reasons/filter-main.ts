import type { FilterMainReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { capital } from "../capital.js";
import { choiceOf, filterName } from "../filter-name.js";
import { atDepths, densityOf, depth, errorFall, shareOf, span, strength } from "../format.js";
import { filterSeldomReasons } from "./filter-seldom.js";

/** What decides the choice of a filter. */
export const filterMainReasons: Texts<FilterMainReasons, string> = {
  ...filterSeldomReasons,
  filter_earns: (p, u) =>
    `${atDepths(p.min_m, p.max_m, u)} ${filterName(p.filter)} ${errorFall(p.without_e, p.with_e)}.`,
  no_filter_earns: (p) =>
    p.best_change < 0
      ? `No filter improves the colours enough. The best of them, ${filterName(p.best)}, would help by too little to mount it.`
      : `No filter improves the colours. Even the best of them, ${filterName(p.best)}, would make them worse.`,
  serves_part_of_range: (p, u) =>
    `It improves the colours from ${span(p.from_m, p.to_m, u)} and worsens them outside that. You cannot change it underwater, and over the whole range it still pays.`,
  only_lamps_would_help: (p) =>
    `A ${strength(p.error)} colour error is left with any filter: the missing colours are too weak here. Bring video lights close to the subject, stay shallower, or settle for the colours of the water.`,
  densities_as_good: (p) =>
    `You will see no difference between densities from ${densityOf(p.from_density)} to ${densityOf(p.to_density)}. The weakest costs the least light.`,
  no_red_to_gain: (p, u) =>
    `From ${depth(p.depth_m, u)} down hardly any red is left: even behind ${filterName(p.filter)} less than 1 % of the red channel's signal is red light. A filter gains nothing there.`,
  filter_adds_no_red: (p, u) =>
    `A filter adds no red light. At ${depth(p.depth_m, u)} ${shareOf(p.with_share * 100)} of what the camera records as red really is red light, and ${shareOf(p.without_share * 100)} without the filter: the rest is green and blue.`,
  near_tie: (p) =>
    `This is a close call. ${capital(choiceOf(p.runner_up))} does nearly as well, and may prove the better choice.`,
};

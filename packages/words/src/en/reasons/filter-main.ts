import type { FilterMainReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { capital } from "../capital.js";
import { choiceOf, filterName } from "../filter-name.js";
import {
  atDepths,
  between,
  densityOf,
  depth,
  distance,
  errorFall,
  kelvin,
  shown,
  span,
  strength,
} from "../format.js";

/** What decides the choice of a filter. */
export const filterMainReasons: Texts<FilterMainReasons, string> = {
  filter_earns: (p, u) =>
    `${atDepths(p.min_m, p.max_m, u)} ${filterName(p.filter)} ${errorFall(p.without_e, p.with_e)}.`,
  no_filter_earns: (p) =>
    p.best_change < 0
      ? `No filter improves the colours enough. The best of them, ${filterName(p.best)}, would help by too little to mount it.`
      : `No filter improves the colours. Even the best of them, ${filterName(p.best)}, would make them worse.`,
  no_filter_owned: () =>
    "Your kit has no filter for the lens, so none is advised. Leave `kit` out to learn which one would serve.",
  subject_out_of_sight: (p, u) =>
    `Haze hides the subject: it is ${distance(p.distance_m, u)} away, and you can see about ${distance(p.visibility_m, u)} here. A filter would only change the colour of the haze. Come closer first.`,
  change_at_depth: (p, u) =>
    `The filter improves the colours from ${span(p.from_m, p.to_m, u)}. Put it on as you enter that part and take it off as you leave it, and set a new white balance each time.`,
  serves_part_of_range: (p, u) =>
    `It improves the colours from ${span(p.from_m, p.to_m, u)} and worsens them outside that. You cannot change it underwater, and over the whole range it still pays.`,
  part_would_gain: (p, u) =>
    `Over the whole range no filter pays, but ${between(p.from_m, p.to_m, u)} a ${p.kind} one would. If you film only there, ask for that part.`,
  only_lamps_would_help: (p) =>
    `A ${strength(p.error)} colour error is left with any filter: the missing colours are too weak here. Bring video lights close to the subject, stay shallower, or settle for the colours of the water.`,
  densities_as_good: (p) =>
    `You will see no difference between densities from ${densityOf(p.from_density)} to ${densityOf(p.to_density)}. The weakest costs the least light.`,
  no_red_to_gain: (p, u) =>
    `From ${depth(p.depth_m, u)} down hardly any red is left: even behind ${filterName(p.filter)} less than 1 % of the red channel's signal is red light. A filter gains nothing there.`,
  filter_adds_no_red: (p, u) =>
    `A filter adds no red light. At ${depth(p.depth_m, u)} ${shown(p.with_share * 100)} % of the red channel's signal is red light above 600 nm with the filter, ${shown(p.without_share * 100)} % without. Green and blue, which the channel also sees, make up the difference.`,
  lamps_are_the_only_light: (p) =>
    `Your video lights are the only light: a filter on the lens would only take some of that away. Set the white balance on a card in their light${p.lamp ? `, about ${kelvin(p.lamp.cct_K)} K at the light` : ""}.`,
  near_tie: (p) =>
    `This is a close call. ${capital(choiceOf(p.runner_up))} does nearly as well: given the uncertainties, there is a ${shown(p.probability * 100)} % chance that it is the better choice.`,
};

import type { FilterChoiceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialShutter, settings } from "../dial.js";
import { filterName } from "../filter-name.js";
import { atDepths, shown } from "../format.js";

/** Reasons on the choice of a filter. */
export const filterChoiceReasons: Texts<FilterChoiceReasons, string> = {
  filter_earns: (p) =>
    `${atDepths(p.min_m, p.max_m)} ${filterName(p.filter)} leaves a mean colour error of ${shown(p.with_e, 1)} (CIEDE2000); without a filter ${shown(p.without_e, 1)} is left after balancing and grading.`,
  no_filter_earns: (p) =>
    `No filter earns its place: the best of them, ${filterName(p.best)}, would ${p.best_change < 0 ? "lower" : "raise"} the mean colour error by ${shown(Math.abs(p.best_change), 2)}, and it takes a fall of ${shown(p.worthwhile, 1)} to be worth mounting.`,
  no_filter_owned: () =>
    "The kit holds no filter for the lens, so none is advised. Leave `kit` out to learn which one would serve.",
  change_at_depth: (p) =>
    `The filter leaves less error than none from ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m: mount it on passing into that part, take it off on leaving it, and balance again each time.`,
  serves_part_of_range: (p) =>
    `It serves from ${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m; outside that it leaves more error than no filter, but it cannot be changed underwater, and over the whole range it still pays.`,
  part_would_gain: (p) =>
    `Over the whole range no filter pays, but for ${p.from_m === p.to_m ? `${shown(p.from_m, 1)} m` : `${shown(p.from_m, 1)} to ${shown(p.to_m, 1)} m`} alone a ${p.kind} one would: ask for that part if you will film there.`,
  denser_gains_nothing_below: (p) =>
    `Down to ${shown(p.depth_m, 1)} m the best density rises, to ${shown(p.density, 2)}; below that a weaker filter, or none, is better, since light or red itself runs out.`,
  only_lamps_would_help: (p) =>
    `A colour error of ${shown(p.error, 1)} is left whatever is mounted: light of the missing colours is too weak here. Bring lamps close to the subject, come shallower, or settle for the colours of the water.`,
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
  densities_as_good: (p) =>
    `Any density from ${shown(p.from_density, 2)} to ${shown(p.to_density, 2)} gives colours that nobody can tell apart. The weakest costs the least light.`,
  no_red_to_gain: (p) =>
    `From ${shown(p.depth_m, 1)} m on nothing of red is red: even behind ${filterName(p.filter)} less than 1 % of the red channel's signal is red light. A filter counts for no gain there.`,
  filter_adds_no_red: (p) =>
    `A filter adds no red light. At ${shown(p.depth_m, 1)} m ${shown(p.with_share * 100)} % of the red channel's signal is red light above 600 nm with it, ${shown(p.without_share * 100)} % without, the rest being green and blue that the channel also sees.`,
  lamps_are_the_only_light: (p) =>
    `Lamps are the only light: a filter on the lens would only take from it. Balance to the lamps${p.lamp ? `, about ${p.lamp.cct_K} K at the lamp` : ""}.`,
  near_tie: (p) =>
    `This is a near tie: the runner-up, ${filterName(p.runner_up)}, differs by ${shown(p.loses_by, 2)} in colour error, where a filter has to gain ${shown(p.worthwhile, 1)} to be worth mounting. With what is not known exactly, it is the better choice with a probability of ${shown(p.probability * 100)} %.`,
  filter_shape_assumed: () =>
    "Curves of filters are not standardised: the shapes used here are assumptions, and how much another one of the same name would change is part of the uncertainty.",
  filter_trade_rule_blue: () => "The trade mounts red in blue water from about 3 m down.",
  filter_trade_rule_green: () => "The trade mounts magenta in green water.",
};

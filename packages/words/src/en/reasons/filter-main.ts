import type { FilterMainReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { filterName } from "../filter-name.js";
import { atDepths, shown } from "../format.js";

/** What decides the choice of a filter. */
export const filterMainReasons: Texts<FilterMainReasons, string> = {
  filter_earns: (p) =>
    `${atDepths(p.min_m, p.max_m)} ${filterName(p.filter)} leaves a mean colour error of ${shown(p.with_e, 1)} (CIEDE2000); without a filter ${shown(p.without_e, 1)} is left.`,
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
  only_lamps_would_help: (p) =>
    `A colour error of ${shown(p.error, 1)} is left whatever is mounted: light of the missing colours is too weak here. Bring lamps close to the subject, come shallower, or settle for the colours of the water.`,
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
};

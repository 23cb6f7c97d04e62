import type { KitAdviceReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { shown } from "./format.js";

const onDives = (dives: number): string => (dives === 1 ? "on one dive" : `on ${dives} dives`);
const allDives = (dives: number): string =>
  dives === 1 ? "the dive" : dives === 2 ? "both dives" : `all ${dives} dives`;
const limit = (delta_e00: number): string => shown(delta_e00, Number.isInteger(delta_e00) ? 0 : 2);
const more = (delta_e00: number): string => shown(delta_e00, 1);

/** Why a kit is as it is. */
export const kitAdviceReasons: Texts<KitAdviceReasons, string> = {
  kit_smallest: (p) =>
    `${p.pieces} of ${p.of_pieces} pieces ${p.pieces === 1 ? "is" : "are"} enough for ${allDives(p.dives)}. No smaller set is.`,
  kit_nothing_needed: (p) =>
    `You need no piece for ${allDives(p.dives)}: with all ${p.of_pieces} of them you would see no difference.`,
  kit_greedy: (p) =>
    `No set of up to ${p.most_tried} pieces is enough. These ${p.pieces} of ${p.of_pieces} were put together piece by piece, so a smaller set may be enough, too.`,
  kit_limit_judged: (p) =>
    `Every dive has less than ${limit(p.limit_delta_e00)} more colour error than with all pieces at hand. About 1 is the least you can see.`,
  kit_limit_given: (p) =>
    `Every dive has less than ${limit(p.limit_delta_e00)} more colour error than with all pieces at hand, as you asked.`,
  kit_loses_most: (p) =>
    `${p.dive} gives up the most: it has ${more(p.delta_e00)} more colour error than with all pieces at hand.`,
  kit_loses_nothing: () => "With this set every dive is as good as with all pieces at hand.",
  kit_dives_close: (p) =>
    `It is close on ${p.dives.join(", ")}: given the uncertainties, the set may not be enough there.`,
  kit_pieces_close: (p) =>
    `It is close for ${p.pieces.join(", ")}: given the uncertainties, the set may be enough without.`,
  kit_one_light_at_a_time: (p) =>
    `Of the ${p.lights} video lights a dive uses one at a time. Video lights that you use together are one piece, with their count.`,
  kit_one_more: (p) =>
    `If you get one more filter, ${filterName(p.filter)} helps most: up to ${more(p.delta_e00)} less colour error, ${onDives(p.dives)}.`,
  kit_no_more_helps: (p) =>
    `No other red or magenta filter takes away ${limit(p.limit_delta_e00)} or more of the colour error on any dive.`,
  piece_buys: (p) => `Without it the colour error is up to ${more(p.delta_e00)} larger ${onDives(p.dives)}.`,
  piece_lights: (p) => `Without it you have no light to film by ${onDives(p.dives)}.`,
  piece_holds: (p) => `It holds ${p.filters.join(", ")} ${onDives(p.dives)}.`,
  piece_spared: (p) =>
    `With all pieces at hand you would use it ${onDives(p.dives)}, for up to ${more(p.delta_e00)} less colour error. That is below the limit.`,
  piece_never_used: () => "On every dive another piece, or none, does as well.",
  piece_never_fits: () =>
    "It fits the camera on none of the dives, with the rings and holders that there are.",
  piece_not_judged: () =>
    "An ND filter changes the exposure and not the colours, so this answer does not judge it. dive-advice says where you need one.",
};

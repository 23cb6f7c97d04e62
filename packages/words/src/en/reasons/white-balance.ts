import type { WhiteBalanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { howOften, kelvin, shown } from "../format.js";

/** What a balance on a card would leave instead, at the limit of the balance the same. */
const onCard = (p: { cast: number; card_cast: number }): string =>
  shown(p.cast, 1) === shown(p.card_cast, 1)
    ? "a card there would leave as much, since the balance is at its limit"
    : `balanced on a card there, ${shown(p.card_cast, 1)} would be left`;

/** Reasons on white balance. */
export const whiteBalanceReasons: Texts<WhiteBalanceReasons, string> = {
  kelvin_leaves_the_water: (p) =>
    `Set to the lamps' own ${kelvin(p.cct_K)} K, the camera would leave a cast of ${shown(p.left, 1)} (CIEDE2000) from ${shown(p.path_m, 1)} m of water between lamp, subject and camera: a card at working distance takes it out.`,
  balance_again: (p) =>
    `Light changes with depth: going down, the cast since the last balance reaches ${shown(p.tolerance, 1)} (CIEDE2000) ${howOften(p.times)}, first at ${shown(p.first_m, 1)} m.`,
  one_balance_serves: (p) =>
    `One balance serves the whole range: a new one would nowhere take out a cast of more than ${shown(p.tolerance, 1)} (CIEDE2000).`,
  kelvin_balance_leaves: (p) =>
    `Set to ${kelvin(p.cct_K)} K, the camera leaves a cast of ${shown(p.cast, 1)} (CIEDE2000) on grey at ${shown(p.depth_m, 1)} m; ${onCard(p)}.`,
  auto_balance_leaves: (p) =>
    `Automatic white balance takes the whole picture for grey on the average, water and all, as far as its limits go: at ${shown(p.depth_m, 1)} m that leaves a cast of ${shown(p.cast, 1)} (CIEDE2000) on grey; ${onCard(p)}.`,
  balance_in_reach: () => "The camera's white balance reaches a neutral card over the whole range.",
  balance_falls_short: (p) =>
    `At ${shown(p.depth_m, 1)} m the camera's balance falls short by ${shown(p.short_stops, 2)} stops between channels, which leaves a cast of ${shown(p.cast, 1)} (CIEDE2000) on grey.`,
};

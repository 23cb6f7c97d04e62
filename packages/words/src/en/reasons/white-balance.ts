import type { WhiteBalanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, distance, howOften, kelvin, shown, stops, strength } from "../format.js";

/** What a card would leave instead: where the camera is at its limit, the same. */
const onCard = (p: { cast: number; card_cast: number }): string => {
  if (shown(p.cast, 1) === shown(p.card_cast, 1))
    return "A card would not help: the white balance is at its limit";
  return p.card_cast < 1
    ? "A card there would take it out"
    : `A card there would leave a ${strength(p.card_cast)} one`;
};

/** Reasons on white balance. */
export const whiteBalanceReasons: Texts<WhiteBalanceReasons, string> = {
  kelvin_leaves_the_water: (p, u) =>
    `Set to the video lights' own ${kelvin(p.cct_K)} K, the camera would leave a ${strength(p.left)} colour cast from ${distance(p.path_m, u)} of water between light, subject and camera. A card at working distance takes it out.`,
  balance_again: (p, u) =>
    `The light changes with depth. Going down, a ${strength(p.tolerance)} colour cast builds up ${howOften(p.times)}, first at ${depth(p.first_m, u)}: white-balance again then.`,
  one_balance_serves: (p) =>
    `One white balance serves the whole range: nowhere is a new one worth it, with a ${strength(p.tolerance)} colour cast at most to take out.`,
  kelvin_balance_leaves: (p, u) =>
    `Set to ${kelvin(p.cct_K)} K, the camera leaves a ${strength(p.cast)} colour cast on grey at ${depth(p.depth_m, u)}. ${onCard(p)}.`,
  auto_balance_leaves: (p, u) =>
    `Automatic white balance makes the whole picture grey on average, water and all, as far as it reaches. At ${depth(p.depth_m, u)} that leaves a ${strength(p.cast)} colour cast on grey. ${onCard(p)}.`,
  balance_in_reach: () => "The camera's white balance can make a card neutral over the whole range.",
  balance_falls_short: (p, u) =>
    `At ${depth(p.depth_m, u)} the camera's white balance falls short by ${stops(p.short_stops)} between channels. That leaves a ${strength(p.cast)} colour cast on grey.`,
};

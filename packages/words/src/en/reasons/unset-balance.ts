import type { WhiteBalanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, distance, kelvin, shown, strength } from "../format.js";

/** What a card would leave instead: where the camera is at its limit, the same. */
const onCard = (p: { cast: number; card_cast: number }): string => {
  if (shown(p.cast, 1) === shown(p.card_cast, 1))
    return "A card would not help: the white balance is at its limit";
  return p.card_cast < 1
    ? "A card there would take it out"
    : `A card there would leave a ${strength(p.card_cast)} one`;
};

/** What is left where the white balance is not set on a card. */
export const unsetBalanceReasons: Texts<
  Pick<WhiteBalanceReasons, "kelvin_leaves_the_water" | "kelvin_balance_leaves" | "auto_balance_leaves">,
  string
> = {
  kelvin_leaves_the_water: (p, u) =>
    `Set to the video lights' own ${kelvin(p.cct_K)} K, the camera would leave a ${strength(p.left)} colour cast from ${distance(p.path_m, u)} of water between light, subject and camera. A card at working distance takes it out.`,
  kelvin_balance_leaves: (p, u) =>
    `Set to ${kelvin(p.cct_K)} K, the camera leaves a ${strength(p.cast)} colour cast on grey at ${depth(p.depth_m, u)}. ${onCard(p)}.`,
  auto_balance_leaves: (p, u) =>
    `Automatic white balance makes the whole picture grey on average, water and all, as far as it reaches. At ${depth(p.depth_m, u)} that leaves a ${strength(p.cast)} colour cast on grey. ${onCard(p)}.`,
};

import type { BalanceSteps } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { kelvin, shown } from "./format.js";
import { spokenDepths } from "./list.js";

/** How to balance, in words that can be said at a briefing. */
export const balanceProcedure: Texts<BalanceSteps, string> = {
  lamps_on: () => "Switch the lamps on in the water, at full power, and give them a moment.",
  card_in_lamp_light: () =>
    "Hold a grey or white card where the subject will be, facing the camera, lit by the lamps alone.",
  fill_frame: () => "Fill the middle of the frame with the card and set the white balance to it.",
  no_kelvin_fits: () => "Without a card there is no kelvin setting that fits these lamps.",
  kelvin: (p) => `Without a card, set ${kelvin(p.cct_K)} K; the water between will still show.`,
  keep_distance: () =>
    "Keep to that distance: closer or farther, the water takes another share of red. The balance holds as long as the distance does.",
  lamps_away: () => "Switch the lamps off, or turn them away from the card.",
  filter_first: () => "Mount the filter first if one is used: the balance goes through it.",
  card_upright: () =>
    "Hold a grey or white card upright in front of the subject, out of your own shadow, turned as the subject is.",
  going_down: (p) => `Going down, balance at ${spokenDepths(p.depths_m)}.`,
  coming_up: (p) => `Coming up, balance at ${spokenDepths(p.depths_m)}.`,
  out_of_reach: (p) =>
    `From ${shown(p.depth_m, 1)} m on the camera cannot make the card quite neutral: take the nearest it offers and leave the rest to the grade.`,
  leave_to_camera: () => "Leave the white balance on automatic, and look at a picture before you go deeper.",
  set_kelvin: (p) => `Set the white balance to ${kelvin(p.cct_K)} K, and leave it there.`,
  card_would_do_better: (p) =>
    `From ${shown(p.depth_m, 1)} m on a white balance on a card would do clearly better, if your camera takes one.`,
  light_changes: () => "Balance again when the light changes: a cloud, a shaded wall, another kind of water.",
};

import type { BalanceSteps } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { depth, depths, kelvin } from "./format.js";

/** How to set a white balance, in words for a briefing. */
export const balanceProcedure: Texts<BalanceSteps, string> = {
  lamps_on: () => "Switch the video lights on in the water, at full power, and give them a moment.",
  card_in_lamp_light: () =>
    "Hold a grey or white card where the subject will be, facing the camera, lit by the video lights alone.",
  fill_frame: () => "Fill the middle of the frame with the card and set the white balance.",
  no_kelvin_fits: () => "Without a card, no Kelvin preset fits these video lights.",
  kelvin: (p) => `Without a card, set ${kelvin(p.cct_K)} K; the water between will still show.`,
  keep_distance: () =>
    "Keep that distance: closer or farther, the water costs a different amount of red. The white balance holds only as long as the distance does.",
  lamps_away: () => "Switch the video lights off, or turn them away from the card.",
  filter_first: () => "If you use a filter, mount it first: the camera has to see the card through it.",
  card_upright: () =>
    "Hold a grey or white card upright in front of the subject, out of your own shadow, facing the way the subject does.",
  going_down: (p, u) => `Going down, white-balance at ${depths(p.depths_m, u)}.`,
  coming_up: (p, u) => `Coming up, white-balance at ${depths(p.depths_m, u)}.`,
  out_of_reach: (p, u) =>
    `From ${depth(p.depth_m, u)} down the camera cannot make the card quite neutral: take the nearest it offers and leave the rest to the grade.`,
  leave_to_camera: () => "Leave the white balance on automatic, and look at a picture before you go on.",
  set_kelvin: (p) => `Set the white balance to ${kelvin(p.cct_K)} K, and leave it there.`,
  card_would_do_better: (p, u) =>
    `From ${depth(p.depth_m, u)} down a white balance on a card would be clearly better, if your camera can set one.`,
  balance_near: () =>
    "The subject is out of reach: do not go after it. Hold the card, or what stands in for it, at arm's length, turned as the subject is.",
  light_changes: () =>
    "White-balance again when the light changes: under a cloud, along a shaded wall, in different water.",
};

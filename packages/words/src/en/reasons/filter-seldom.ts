import type { FilterMainReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { between, distance, kelvin, span } from "../format.js";

/** What decides the choice of a filter in few scenes. */
export const filterSeldomReasons: Texts<
  Pick<
    FilterMainReasons,
    | "no_filter_owned"
    | "subject_out_of_sight"
    | "change_at_depth"
    | "part_would_gain"
    | "lamps_are_the_only_light"
  >,
  string
> = {
  no_filter_owned: () =>
    "Your kit has no filter for the lens, so none is advised. Leave `kit` out to learn which one would serve.",
  subject_out_of_sight: (p, u) =>
    `Haze hides the subject: it is ${distance(p.distance_m, u)} away, and you can see about ${distance(p.visibility_m, u)} here. A filter would only change the colour of the haze. Come closer first.`,
  change_at_depth: (p, u) =>
    `The filter improves the colours from ${span(p.from_m, p.to_m, u)}. Put it on as you enter that part and take it off as you leave it, and set a new white balance each time.`,
  part_would_gain: (p, u) =>
    `Over the whole range no filter pays, but ${between(p.from_m, p.to_m, u)} a ${p.kind} one would. If you film only there, ask for that part.`,
  lamps_are_the_only_light: (p) =>
    `Your video lights are the only light: a filter on the lens would only take some of that away. Set the white balance on a card in their light${p.lamp ? `, about ${kelvin(p.lamp.cct_K)} K at the light` : ""}.`,
};

import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { distance, neutral, shown } from "./format.js";

/** What only some dives take beside filter and card: lights, an ND, what they are mounted on. */
export const takeBeside: Texts<Omit<TakeCodes, "lens_filter" | "card" | "spares">, TakeText> = {
  neutral_density: (p) => ({ what: neutral(p.density), why: "It is too bright without it." }),
  filter_mount: (p) => ({
    what: { flip: "the flip mount", clip_on: "the clip mount" }[p.mount],
    why: "It holds the filter in front of the port.",
  }),
  lamp_filters: (p) => ({
    what: `${filterName(p.filter)} for each video light`,
    why: "It matches them to daylight at depth.",
  }),
  lamp_filters_lacking: (p) => ({
    what: `a ${p.kind} filter of density ${shown(p.density, 1)} for each video light`,
    why: "Your kit has none that matches. With these you could leave the video lights on.",
  }),
  lamp: (p, u) => ({
    what: p.check ? "the video lights, charged and checked" : "the video lights",
    why: p.check
      ? `The plan counts on all their light, from ${distance(p.check.distance_m, u)}.`
      : "On this dive they stay off.",
  }),
  dive_light: () => ({
    what: "a dive light",
    why: "It is the light that you dive by.",
  }),
};

import type { SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { choiceOf, filterName } from "./filter-name.js";
import { capital, depth, fromTo, howOften, kelvin, stops } from "./format.js";
import { lampSummary } from "./lamp-summary.js";

/** Der Plan in wenigen Sätzen. */
export const summary: Texts<SummaryCodes, string> = {
  ...lampSummary,
  no_filter: () => "Nimm keinen Farbfilter.",
  mount: (p) => `Bring ${filterName(p.filter, "wen")} an.`,
  carry: (p, u) => `Nimm ${filterName(p.filter, "wen")} mit und verwende ihn ${fromTo(p.from_m, p.to_m, u)}.`,
  too_dark: (p, u) => `In ${depth(p.depth_m, u)} ist es um ${stops(p.shortfall_stops)} zu dunkel.`,
  expose: ({ from, to }, u) =>
    to === undefined || setting(to) === setting(from)
      ? `Belichte mit ${setting(from)}.`
      : `Belichte in ${depth(from.depth_m, u)} mit ${setting(from)}, in ${depth(to.depth_m, u)} mit ${setting(to)}.`,
  balance: (p) =>
    `Mach zu Beginn einen Weißabgleich auf die Karte${p.again > 0 ? ` und auf dem Weg nach unten noch ${howOften(p.again)}` : ""}.`,
  expose_by_itself: () => "Überlass die Belichtung der Kamera.",
  balance_by_itself: () => "Lass den Weißabgleich auf Automatik.",
  balance_in_kelvin: (p) => `Stell den Weißabgleich auf ${kelvin(p.cct_K)}.`,
  close_filter: (p) => `Es ist knapp: ${capital(choiceOf(p.filter, "wäre"))} etwa gleich gut.`,
};

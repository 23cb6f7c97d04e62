import type { LampPlan, SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { choiceOf, filterName } from "./filter-name.js";
import { capital, depth, fromTo, howOften, kelvin, stops } from "./format.js";

const LAMPS: Readonly<Record<LampPlan, string>> = {
  none: "ohne Videolampen",
  lamps_off: "mit ausgeschalteten Videolampen",
  lamps_with_filter: "mit Filtern auf den Videolampen",
  lamps_lead: "mit Videolampen und dem Weißabgleich in ihrem Licht",
  lamps_only: "mit den Videolampen allein",
  daylight_leads: "mit Videolampen und dem Weißabgleich im Tageslicht",
};

/** Der Plan in wenigen Sätzen. */
export const summary: Texts<SummaryCodes, string> = {
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
  lamps_off: () => "Lass die Videolampen aus: Ihre Farbe würde nicht zum Tageslicht passen.",
  lamps_with_filter: () => "Setz die Filter auf die Videolampen und mach den Weißabgleich im Tageslicht.",
  lamps_lead: () => "Lass die Videolampen führen und mach den Weißabgleich in ihrem Licht.",
  lamps_only: () => "Mach den Weißabgleich auf eine Karte im Licht der Videolampen, im Arbeitsabstand.",
  daylight_leads: () => "Das Licht der Videolampen fällt gegen das Tageslicht kaum auf.",
  close_filter: (p) => `Es ist knapp: ${capital(choiceOf(p.filter, "wäre"))} etwa gleich gut.`,
  close_lamps: (p) =>
    `Es ist knapp: ${capital(LAMPS[p.plan])}${p.filter ? ` und ${p.filter.kind === "none" ? "ohne Filter" : `mit ${filterName(p.filter, "wem")}`} auf dem Objektiv` : ""} würde es etwa gleich gut.`,
};

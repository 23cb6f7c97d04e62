import type { LampPlan, LampSummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { capital } from "./format.js";

const LAMPS: Readonly<Record<LampPlan, string>> = {
  none: "ohne Videolampen",
  lamps_off: "mit ausgeschalteten Videolampen",
  lamps_with_filter: "mit Filtern auf den Videolampen",
  lamps_with_daylight: "mit Videolampen im Tageslicht und dem Weißabgleich in beidem",
  lamps_lead: "mit Videolampen und dem Weißabgleich in ihrem Licht",
  lamps_only: "mit den Videolampen allein",
  daylight_leads: "mit Videolampen und dem Weißabgleich im Tageslicht",
};

/** Was mit den Videolampen geschieht, in einem Satz. */
export const lampSummary: Texts<LampSummaryCodes, string> = {
  lamps_off: () => "Lass die Videolampen aus: Ihre Farbe würde nicht zum Tageslicht passen.",
  lamps_with_filter: () => "Setz die Filter auf die Videolampen und mach den Weißabgleich im Tageslicht.",
  lamps_with_daylight: () => "Lass die Videolampen an und mach den Weißabgleich in beidem Licht zusammen.",
  lamps_lead: () => "Lass die Videolampen führen und mach den Weißabgleich in ihrem Licht.",
  lamps_only: () => "Mach den Weißabgleich auf eine Karte im Licht der Videolampen, im Arbeitsabstand.",
  daylight_leads: () => "Das Licht der Videolampen fällt gegen das Tageslicht kaum auf.",
  close_lamps: (p) =>
    `Es ist knapp: ${capital(LAMPS[p.plan])}${p.filter ? ` und ${p.filter.kind === "none" ? "ohne Filter" : `mit ${filterName(p.filter, "wem")}`} auf dem Objektiv` : ""} würde es etwa gleich gut.`,
};

import type { LampPlan, LampSummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { onLens } from "./filter-name.js";

const LAMPS: Readonly<Record<LampPlan, string>> = {
  none: "se passer de phares vidéo",
  lamps_off: "éteindre les phares vidéo",
  lamps_with_filter: "filtrer les phares vidéo",
  lamps_with_daylight:
    "allumer les phares vidéo à la lumière du jour et faire la balance des blancs sous les deux lumières",
  lamps_lead: "allumer les phares vidéo et faire la balance des blancs à leur lumière",
  lamps_only: "travailler avec les seuls phares vidéo",
  daylight_leads: "allumer les phares vidéo et faire la balance des blancs à la lumière du jour",
};

/** Ce qu’on fait des phares vidéo, en une phrase. */
export const lampSummary: Texts<LampSummaryCodes, string> = {
  lamps_off: () =>
    "Laissez les phares vidéo éteints : leur couleur ne s’accorderait pas à la lumière du jour.",
  lamps_with_filter: () =>
    "Mettez les filtres sur les phares vidéo et faites la balance des blancs à la lumière du jour.",
  lamps_with_daylight: () =>
    "Laissez les phares vidéo allumés et faites la balance des blancs sous les deux lumières.",
  lamps_lead: () => "Laissez les phares vidéo dominer et faites la balance des blancs à leur lumière.",
  lamps_only: () =>
    "Faites la balance des blancs sur une charte éclairée par les phares vidéo, à la distance de travail.",
  daylight_leads: () => "Face à la lumière du jour, la lumière des phares vidéo ne se voit presque pas.",
  close_lamps: (p) =>
    `C’est serré : ${LAMPS[p.plan]}${p.filter ? `, ${onLens(p.filter)},` : ""} reviendrait à peu près au même.`,
};

import type { LampPlan, SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { filterName, onLens } from "./filter-name.js";
import { depth, fromTo, howOften, kelvin, stops } from "./format.js";

const LAMPS: Readonly<Record<LampPlan, string>> = {
  none: "se passer de phares vidéo",
  lamps_off: "éteindre les phares vidéo",
  lamps_with_filter: "filtrer les phares vidéo",
  lamps_lead: "allumer les phares vidéo et faire la balance des blancs à leur lumière",
  lamps_only: "travailler avec les seuls phares vidéo",
  daylight_leads: "allumer les phares vidéo et faire la balance des blancs à la lumière du jour",
};

/** Le plan en quelques phrases. */
export const summary: Texts<SummaryCodes, string> = {
  no_filter: () => "Ne montez pas de filtre de couleur.",
  mount: (p) => `Montez ${filterName(p.filter)}.`,
  carry: (p, u) => `Emportez ${filterName(p.filter)} et servez-vous-en ${fromTo(p.from_m, p.to_m, u)}.`,
  too_dark: (p, u) => `À ${depth(p.depth_m, u)}, il manque ${stops(p.shortfall_stops)} de lumière.`,
  expose: ({ from, to }, u) =>
    to === undefined || setting(to) === setting(from)
      ? `Exposez à ${setting(from)}.`
      : `À ${depth(from.depth_m, u)}, exposez à ${setting(from)} ; à ${depth(to.depth_m, u)}, à ${setting(to)}.`,
  balance: (p) =>
    `Faites la balance des blancs sur une charte au début${p.again > 0 ? `, puis encore ${howOften(p.again)} en descendant` : ""}.`,
  expose_by_itself: () => "Laissez l’exposition à l’appareil.",
  balance_by_itself: () => "Laissez la balance des blancs en automatique.",
  balance_in_kelvin: (p) => `Réglez la balance des blancs sur ${kelvin(p.cct_K)}.`,
  lamps_off: () =>
    "Laissez les phares vidéo éteints : leur couleur ne s’accorderait pas à la lumière du jour.",
  lamps_with_filter: () =>
    "Mettez les filtres sur les phares vidéo et faites la balance des blancs à la lumière du jour.",
  lamps_lead: () => "Laissez les phares vidéo dominer et faites la balance des blancs à leur lumière.",
  lamps_only: () =>
    "Faites la balance des blancs sur une charte éclairée par les phares vidéo, à la distance de travail.",
  daylight_leads: () => "Face à la lumière du jour, la lumière des phares vidéo ne se voit presque pas.",
  close_filter: (p) => `C’est serré : ${filterName(p.filter)} serait à peu près aussi bien.`,
  close_lamps: (p) =>
    `C’est serré : ${LAMPS[p.plan]}${p.filter ? `, ${onLens(p.filter)},` : ""} serait à peu près aussi bien.`,
};

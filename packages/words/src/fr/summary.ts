import type { SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { filterName } from "./filter-name.js";
import { between, depth, howOften, kelvin, stops } from "./format.js";
import { lampSummary } from "./lamp-summary.js";

/** Le plan en quelques phrases. */
export const summary: Texts<SummaryCodes, string> = {
  ...lampSummary,
  no_filter: () => "Ne montez pas de filtre de couleur.",
  mount: (p) => `Montez ${filterName(p.filter)}.`,
  carry: (p, u) => `Emportez ${filterName(p.filter)} et servez-vous-en ${between(p.from_m, p.to_m, u)}.`,
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
  close_filter: (p) => `C’est serré : ${filterName(p.filter)} irait à peu près aussi bien.`,
};

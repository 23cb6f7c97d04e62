import type { WaysOut } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { kindName } from "./filter-name.js";
import { distance, shown, stops } from "./format.js";

/** Que faire quand les phares vidéo et la lumière du jour se contrarient. */
export const waysOut: Texts<WaysOut, string> = {
  lamps_off: (p) =>
    `Éteignez les phares vidéo, laissez-les sur le caisson et faites la balance des blancs à la lumière du jour. Le sujet sera plus sombre de ${stops(p.cost_stops)}.`,
  lamp_filter: (p) =>
    `Avant la plongée, mettez un ${kindName(p.kind)} de densité ${shown(p.density, 1)} environ sur chaque phare vidéo : il les accorde à la lumière du jour ici${p.is_seen ? ", mais laisse encore une dominante visible" : ""}. Faites la balance des blancs à la lumière du jour.`,
  balance_to_lamps: () =>
    "Faites la balance des blancs sur une charte éclairée par les phares vidéo : les couleurs du sujet sont justes, et tout ce que seule la lumière du jour atteint prend la couleur de l’eau.",
  balance_to_both: () =>
    "Laissez les phares vidéo allumés et faites la balance des blancs sur une charte à l’endroit du sujet, éclairée par les deux lumières : les couleurs du sujet sont justes, et tout ce que seule la lumière du jour atteint prend la couleur de l’eau.",
  come_closer: (p, u) =>
    `Bien stabilisé, amenez les phares vidéo à ${distance(p.distance_m, u)} du sujet et faites la balance des blancs sur une charte éclairée par eux : à cette distance et plus près, ils dominent la lumière du jour.`,
};

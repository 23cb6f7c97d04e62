import type { WaysOut } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { kindName } from "./filter-name.js";
import { densityOf, distance, percent, stops } from "./format.js";

/** Que faire quand les phares vidéo et la lumière du jour se contrarient. */
export const waysOut: Texts<WaysOut, string> = {
  lamps_off: (p) =>
    `Éteignez les phares vidéo, laissez-les sur le caisson et faites la balance des blancs à la lumière du jour. Le sujet sera plus sombre de ${stops(p.cost_stops)}.`,
  lamp_filter: (p) =>
    `Mettez sur chaque phare vidéo un filtre qui rapproche sa couleur de celle du jour à cette profondeur : il doit laisser passer ${percent(p.red * 100)} du rouge, ${percent(p.green * 100)} du vert et ${percent(p.blue * 100)} du bleu. Le filtre simple le plus proche est un ${kindName(p.kind)} de densité ${densityOf(p.density)}${p.is_seen ? ", qui laisse encore une dominante visible" : ""}. Faites la balance des blancs à la lumière du jour.`,
  balance_to_lamps: () =>
    "Faites la balance des blancs sur une charte éclairée par les phares vidéo : les couleurs du sujet sont justes, et tout ce que seule la lumière du jour atteint prend la couleur de l’eau.",
  come_closer: (p, u) =>
    `Amenez les phares vidéo à ${distance(p.distance_m, u)} du sujet, bien stabilisé, et faites la balance des blancs sur une charte éclairée par eux : de là et plus près, ils dominent la lumière du jour.`,
};

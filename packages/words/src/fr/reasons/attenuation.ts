import type { AttenuationReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, stops } from "../format.js";

/** Ce qu’il y a à dire de l’atténuation. */
export const attenuationReasons: Texts<AttenuationReasons, string> = {
  red_goes_first: (p, u) =>
    `À ${depth(p.depth_m, u)}, cette eau a déjà retiré ${stops(p.red_stops)} au canal rouge, ${stops(p.green_stops)} au vert et ${stops(p.blue_stops)} au bleu.`,
  no_daylight_relative: () =>
    "Il n’y a pas de lumière du jour ici : les pertes sont calculées pour un ciel uniforme de 5500 K. Aucun éclairement n’est donné.",
  sun_path: (p) =>
    `Un soleil oblique allonge le trajet dans l’eau : le cosinus moyen du trajet est de ${shown(p.mu0, 2)}, contre 0,90 dans les tables.`,
};

import type { ExposureLossReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialFNumber, settings } from "../dial.js";
import { depth, distance, neutral, percent, shown, stops } from "../format.js";

/** Ce qu’il y a à dire de la lumière perdue. */
export const exposureLossReasons: Texts<ExposureLossReasons, string> = {
  too_bright: (p, u) =>
    `À ${depth(p.depth_m, u)}, l’image est surexposée de ${stops(p.excess_stops)} même à ${settings(p)}, l’exposition la plus faible que permettent vos limites. Prenez ${neutral(p.density)} ; monter en ISO ne ferait qu’aggraver.`,
  aperture_can_close: (p) =>
    `Vous pourriez plutôt fermer le diaphragme à f/${dialFNumber(p.f_number)} : l’ouverture que vous avez imposée est plus grande que nécessaire.`,
  too_dark: (p, u) =>
    `À ${depth(p.depth_m, u)}, il manque ${stops(p.shortfall_stops)} de lumière même à ${settings(p)}. Il vous faut plus de lumière : une plongée sous un soleil plus haut, moins d’eau au-dessus, un phare vidéo ou un temps de pose plus long.`,
  exposure_fits: (p, u) =>
    `À ${depth(p.depth_m, u)}, la mesure sur le sujet donne IL ${shown(p.ev, 1)} pour 100 ISO, soit ${settings(p)}.`,
  levels_apart: (p, u) =>
    p.stops > 0
      ? `À ${depth(p.depth_m, u)}, une mesure moyenne de l’image expose ${stops(p.stops)} de moins qu’il ne faut au sujet, parce que l’eau et le fond sont plus clairs. Exposez pour le sujet, ou suivez la mesure si le bleu de l’arrière-plan vous importe plus.`
      : `À ${depth(p.depth_m, u)}, une mesure moyenne de l’image expose ${stops(-p.stops)} de plus qu’il ne faut au sujet, parce que l’eau et le fond sont plus sombres. Exposez pour le sujet, ou il sera brûlé.`,
  auto_exposes_picture: (p, u) =>
    p.stops > 0
      ? `L’exposition automatique mesure toute l’image. À ${depth(p.depth_m, u)}, le sujet est alors trop sombre de ${stops(p.stops)}, parce que l’eau et le fond sont plus clairs. Réglez la correction d’exposition sur +${stops(p.stops)}, ou mémorisez l’exposition sur le sujet.`
      : `L’exposition automatique mesure toute l’image. À ${depth(p.depth_m, u)}, le sujet est alors trop clair de ${stops(-p.stops)}, parce que l’eau et le fond sont plus sombres. Réglez la correction d’exposition sur −${stops(-p.stops)}, ou mémorisez l’exposition sur le sujet.`,
  filter_makes_it_darker: (p) =>
    `Le filtre sur l’objectif coûte ${stops(p.stops)} de la lumière qui manque : retirez-le.`,
  any_filter_would_worsen: () =>
    "Un filtre sur l’objectif coûterait encore de la lumière et aggraverait les choses.",
  port_takes: (p) =>
    `Le hublot coûte ${stops(p.stops)}, quelle que soit sa forme : la lumière s’étale en passant de l’eau à l’air, et la vitre en réfléchit un peu. Une mesure faite dans le caisson en tient déjà compte.`,
  water_takes_most: (p, u) =>
    `De la surface au capteur, à ${depth(p.depth_m, u)}, on perd ${stops(p.total_stops)}, dont ${stops(p.depth_stops)} dans l’eau au-dessus.`,
  haze_is_the_limit: (p, u) =>
    `À travers ${distance(p.distance_m, u)} de cette eau, il reste ${percent(p.contrast_percent)} du contraste : c’est le voile qui limite, pas la couleur. Approchez-vous avant de changer quoi que ce soit d’autre.`,
};

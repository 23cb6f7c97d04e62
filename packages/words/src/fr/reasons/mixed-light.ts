import type { MixedLightReasons } from "@sunfathom/planner";
import type { Texts, TextUnits } from "../../problems/texts.js";
import {
  brightnessRange,
  capital,
  castOf,
  depth,
  distance,
  fromTo,
  grouped,
  lumens,
  partOfBrightness,
  redder,
  stops,
} from "../format.js";

function haveThem({ verdict, closer }: MixedLightReasons["to_lead"], u?: TextUnits): string {
  const from = closer ? ` Ils y arrivent à partir de ${distance(closer.distance_m, u)}.` : "";
  if (verdict === "enough") return "Vos phares les ont.";
  if (verdict === "closer") return `Vos phares en ont moins.${from}`;
  if (verdict === "stronger")
    return "Seuls des phares plus puissants y arrivent, avec la chaleur, l’éblouissement et le poids que cela implique.";
  return "Aucun phare qu’un plongeur emporte ne les donne : travaillez avec la lumière du jour, approchez-vous ou filmez quand le soleil est plus bas.";
}

const two = (flux_lm: number): string => grouped(Number(flux_lm.toPrecision(2)));

/** Ce qu’il y a à dire des lumières mêlées. */
export const mixedLightReasons: Texts<MixedLightReasons, string> = {
  lamps_only: (p) =>
    `Vos phares vidéo sont la seule lumière : faites la balance des blancs à leur lumière. L’eau entre le phare, le sujet et l’appareil coûte quand même ${stops(p.red)} de rouge, ${stops(p.green)} de vert et ${stops(p.blue)} de bleu : une charte à la distance de travail vaut mieux qu’un réglage en kelvins.`,
  daylight_only: () => "Aucun phare vidéo n’est allumé : il n’y a rien à mélanger.",
  lights_fight: (p, u) =>
    `À ${depth(p.depth_m, u)}, avec la balance des blancs faite à la lumière du jour, tout ce que les phares vidéo éclairent prend ${castOf(p.split)}, ${redder(p.red_excess)}. Aucune balance des blancs ne l’efface à elle seule.`,
  lamps_lead: (p, u) =>
    `À ${depth(p.depth_m, u)}, vos phares vidéo dépassent la lumière du jour de ${stops(p.green)} dans le vert. Faites la balance des blancs à leur lumière ; la lumière du jour ne teinte presque pas le sujet.`,
  daylight_leads: (p, u) =>
    `À ${depth(p.depth_m, u)}, la lumière du jour dépasse celle de vos phares vidéo de ${stops(-p.green)} dans le vert. Faites la balance des blancs à la lumière du jour ; la lumière des phares vidéo ne se voit presque pas.`,
  mixing_zone: (p, u) =>
    `${capital(fromTo(p.from_m, p.to_m, u))}, les phares vidéo et la lumière du jour se mélangent de façon visible.`,
  lit_haze: (p) =>
    `Les particules éclairées entre l’appareil et le sujet ont environ ${partOfBrightness(p.percent)} d’un sujet gris (${brightnessRange(p.low, p.high)}). Écartez les phares vidéo de l’objectif, tournez-les vers l’extérieur, pour que seul le bord du faisceau touche le sujet, et approchez-vous.`,
  to_lead: (p, u) =>
    `À ${depth(p.depth_m, u)}, pour dépasser la lumière du jour de ${stops(p.stops)} sur un sujet à ${distance(p.distance_m, u)} des phares vidéo, il faut environ ${lumens(p.likely_lm)} en tout (de ${two(p.low_lm)} à ${lumens(p.high_lm)}). ${haveThem(p, u)}`,
  upright_subject: () =>
    "Les phares vidéo et la lumière du jour sont comparés sur un sujet vertical, qui ne reçoit qu’une partie de la lumière d’en haut.",
};

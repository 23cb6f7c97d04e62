import type { ColourRecoveryReasons, RedQuality } from "@sunfathom/planner";
import type { Texts, TextUnits } from "../../problems/texts.js";
import { depth, depthNumber, percent, shown } from "../format.js";

const QUALITY: Readonly<Record<RedQuality, string>> = {
  excellent: "excellent",
  acceptable: "correct",
  poor: "faible",
  gone: "perdu",
};

/** Jusqu’où le rouge est bon et d’où il se perd : dès la surface, ou les deux à la même profondeur. */
function reach(p: ColourRecoveryReasons["red_is_gone"], u?: TextUnits): string {
  const [good, gone] = [depthNumber(p.acceptable_m, u), depthNumber(p.gone_m, u)];
  if (gone === "0") return "se perd dans le bruit presque dès la surface";
  if (good === "0")
    return `est faible dès la surface et se perd dans le bruit à partir de ${depth(p.gone_m, u)} environ`;
  return `s’enregistre correctement jusqu’à ${depth(p.acceptable_m, u)} environ et se perd dans le bruit ${good === gone ? "au-delà" : `à partir de ${depth(p.gone_m, u)} environ`}`;
}

/** Ce que la couleur peut retrouver, et pourquoi. */
export const colourRecoveryReasons: Texts<ColourRecoveryReasons, string> = {
  red_record: (p, u) =>
    `À ${depth(p.depth_m, u)}, sans filtre, ${percent(p.share * 100)} du signal du canal rouge est de la lumière rouge, de plus de 600 nm. Sur un gris à 18\u00a0%, elle vaut ${shown(p.snr, 1)} fois le bruit : le rouge est ${QUALITY[p.quality]}. Pour le rouge, un rapport de 21 est excellent et de 5,3 correct (d’après ISO 12232).`,
  filter_helps_red: (p, u) =>
    `À ${depth(p.depth_m, u)}, le filtre n’ajoute pas de lumière rouge, mais vous pouvez exposer le rouge plus haut avant que le bleu et le vert ne saturent. La lumière rouge vaut ${shown(p.with_snr, 1)} fois le bruit au lieu de ${shown(p.without_snr, 1)}.`,
  filter_does_not_help_red: (p, u) =>
    `À ${depth(p.depth_m, u)}, le filtre n’aide guère le rouge : la lumière manque pour l’exposer plus haut. La lumière rouge vaut ${shown(p.with_snr, 1)} fois le bruit avec le filtre et ${shown(p.without_snr, 1)} sans. Un filtre n’aide le rouge que là où il y a de la lumière à revendre.`,
  same_settings_no_gain: (p) =>
    `À sensibilité, ouverture et vitesse égales, un filtre ne rend guère le rouge moins bruité. Il écarte seulement un peu de vert et de bleu du canal rouge : la lumière rouge vaut ${shown(p.with_snr, 1)} fois le bruit avec lui, ${shown(p.without_snr, 1)} sans.`,
  red_is_gone: (p, u) =>
    `${p.with_filter ? "Avec le filtre" : "Sans filtre"}, le rouge ${reach(p, u)}. Aucune retouche ne ramène un rouge qui n’a pas été enregistré.`,
  red_codes: (p, u) =>
    `À ${depth(p.depth_m, u)}, un IL de rouge autour du gris moyen compte ${shown(p.codes_8)} niveaux en 8 bits et ${shown(p.codes_10)} en 10. S’il y en a moins de 20 environ, des bandes apparaissent quand on les étire.`,
};

import type { BalanceSteps } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { depth, depths, kelvin } from "./format.js";

/** Comment faire la balance des blancs, pour un briefing. */
export const balanceProcedure: Texts<BalanceSteps, string> = {
  lamps_on: () => "Allumez les phares vidéo dans l’eau, à pleine puissance, et attendez un instant.",
  card_in_lamp_light: () =>
    "Tenez une charte grise ou blanche là où sera le sujet, face à l’appareil, éclairée par les seuls phares vidéo.",
  fill_frame: () => "Remplissez le centre de l’image avec la charte et faites la balance des blancs.",
  no_kelvin_fits: () => "Sans charte, aucun réglage en kelvins ne convient à ces phares vidéo.",
  kelvin: (p) =>
    `Sans charte, réglez sur ${kelvin(p.cct_K)} ; l’eau qui vous sépare du sujet se verra encore.`,
  keep_distance: () =>
    "Gardez cette distance : plus près ou plus loin, l’eau ne prend pas la même part de rouge. La balance des blancs ne vaut que pour cette distance.",
  lamps_away: () => "Éteignez les phares vidéo, ou détournez-les de la charte.",
  filter_first: () =>
    "Si vous utilisez un filtre, montez-le d’abord : l’appareil doit voir la charte à travers lui.",
  card_upright: () =>
    "Tenez une charte grise ou blanche à la verticale devant le sujet, hors de votre ombre, tournée comme lui.",
  going_down: (p, u) => `En descendant, faites la balance des blancs à ${depths(p.depths_m, u)}.`,
  coming_up: (p, u) => `En remontant, faites la balance des blancs à ${depths(p.depths_m, u)}.`,
  out_of_reach: (p, u) =>
    `À partir de ${depth(p.depth_m, u)}, l’appareil n’arrive plus à rendre la charte tout à fait neutre : prenez ce qu’il offre de plus proche et laissez le reste à l’étalonnage.`,
  leave_to_camera: () =>
    "Laissez la balance des blancs en automatique, et regardez une image avant de continuer.",
  set_kelvin: (p) => `Réglez la balance des blancs sur ${kelvin(p.cct_K)}, et n’y touchez plus.`,
  card_would_do_better: (p, u) =>
    `À partir de ${depth(p.depth_m, u)}, une balance des blancs sur charte serait nettement meilleure, si votre appareil sait la faire.`,
  balance_near: () =>
    "Le sujet est hors de portée : ne le poursuivez pas. Tenez la charte, ou ce qui la remplace, à bout de bras, tournée comme le sujet.",
  light_changes: () =>
    "Refaites la balance des blancs quand la lumière change : sous un nuage, le long d’un tombant à l’ombre, dans une autre eau.",
};

import type { GradeTexts } from "../grade-texts.js";
import { onLens } from "./filter-name.js";
import { between, depth, percent, shown, strength } from "./format.js";

const curves = {
  rec709: "l’ITU-R BT.709",
  hlg: `HLG de l’ITU-R BT.2100, blanc à ${percent(75)}`,
  log: "une courbe logarithmique sur 13\u202fIL",
  linear: "un enregistrement linéaire",
};

export const grade: GradeTexts = {
  name: ({ depth_m, filter }, u) => `Étalonnage de départ pour ${depth(depth_m, u)}, ${onLens(filter)}`,
  does: ({ finish, without_delta_e00, delta_e00 }) =>
    `${finish === "matched" ? "Calé sur une charte" : "Niveau de noir, exposition, balance et saturation"}\u202f: ramène l’erreur de couleur de ${shown(without_delta_e00)} (${strength(without_delta_e00)}) à ${shown(delta_e00)} (${strength(delta_e00)}). C’est un point de départ\u202f: continuez à l’œil.`,
  holds: ({ min_depth_m, max_depth_m }, u) =>
    `Il vaut pour des images tournées ${between(min_depth_m, max_depth_m, u)}, avec le même filtre s’il y en avait un, et avec l’exposition et la balance des blancs de cette profondeur.`,
  red: {
    excellent: "Le rouge est bien enregistré ici. Le rouge qui n’a pas été enregistré reste perdu.",
    acceptable:
      "Le rouge est enregistré avec un peu de bruit ici. Le rouge qui n’a pas été enregistré reste perdu.",
    poor: "Peu de rouge est enregistré ici\u202f: cet étalonnage amplifie aussi son bruit. Le rouge qui n’a pas été enregistré reste perdu.",
    gone: "Aucun rouge n’est enregistré ici. Il reste perdu\u202f: aucun étalonnage ne le ramène.",
  },
  input: ({ finish, curve }) =>
    `${finish === "matched" ? "Canaux de la caméra après sa balance des blancs, sans sa propre matrice de couleur" : "L’image telle que la caméra la donne, primaires de l’ITU-R BT.709"}\u202f; valeurs de code de 0 à 1, plage complète, pour ${typeof curve === "string" ? curves[curve] : "la courbe envoyée"}.`,
  output:
    "sRGB de l’IEC 61966-2-1, valeurs de code de 0 à 1\u202f; ce qui dépasse est une couleur qu’un écran ne peut pas montrer.",
  linear:
    "Lumière linéaire, primaires de l’ITU-R BT.709, de 0 à 1\u202f: décodez l’enregistrement avant, encodez pour l’écran après.",
  convert: "Votre logiciel de montage peut en avoir besoin sous une autre forme.",
};

import type { LightCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { lampCauses } from "./lamp-causes.js";

/** Ce qui rend la lumière dans l’eau incertaine. */
export const causes: Texts<LightCauses, CauseText> = {
  ...lampCauses,
  water_type_resolution: () => ({
    text: "Un type d’eau est une classe large : cette eau peut se situer n’importe où entre ses voisines",
    how_to_shrink:
      "Indiquez la visibilité et la couleur de l’eau, ou photographiez une charte grise à deux profondeurs.",
  }),
  kd_measurement: () => ({
    text: "L’erreur de mesure de l’atténuation diffuse",
    how_to_shrink: "Mesurez à davantage de longueurs d’onde et de profondeurs.",
  }),
  clarity_reading: () => ({
    text: "La justesse avec laquelle vous avez estimé la visibilité",
    how_to_shrink:
      "Mesurez-la le long d’un fil gradué, ou photographiez une charte grise à deux profondeurs.",
  }),
  beam_to_diffuse: () => ({
    text: "La visibilité ne dit pas à quelle vitesse la lumière du jour baisse avec la profondeur",
    how_to_shrink: "Descendez un disque de Secchi, ou photographiez une charte grise à deux profondeurs.",
  }),
  spectral_shape: () => ({
    text: "Deux eaux qui se ressemblent peuvent prendre des couleurs différentes",
    how_to_shrink: "Photographiez une charte grise à deux profondeurs.",
  }),
  hue_name: () => ({
    text: "Un nom de couleur recouvre toute une gamme d’eaux",
    how_to_shrink: "Photographiez une charte grise à deux profondeurs.",
  }),
  scattering_per_water: () => perWater,
  chlorophyll_relation: () => ({
    text: "À concentration de chlorophylle égale, l’atténuation varie d’une eau à l’autre",
    how_to_shrink: "Descendez un disque de Secchi, ou photographiez une charte grise à deux profondeurs.",
  }),
  card_noise: () => ({
    text: "La dispersion des mesures sur la charte",
    how_to_shrink:
      "Photographiez la charte à davantage de profondeurs, exposition et balance des blancs verrouillées.",
  }),
  water_scattering: (p) => (p.known_by === "sight" ? asSeen : perWater),
  path_scattering: () => ({
    text: "La part de lumière diffusée qui arrive encore sur un court trajet",
    how_to_shrink: "Photographiez une charte à bout de bras et à la distance du sujet, et comparez.",
  }),
  sensor: () => ({
    text: "Ce que le canal rouge de cet appareil voit de vert et de bleu",
    how_to_shrink: "Photographiez une charte de couleurs en profondeur avec cet appareil.",
  }),
  daylight_level: () => ({
    text: "La clarté du ciel",
    how_to_shrink: "Indiquez la couverture nuageuse, ou mesurez la lumière en surface avec un posemètre.",
  }),
  upright_share: () => ({
    text: "La part de lumière d’en haut que reçoit le sujet, selon la place du soleil",
    how_to_shrink: "Indiquez où est le soleil par rapport à l’appareil, ou mesurez en profondeur.",
  }),
  light_field: () => ({
    text: "Les directions d’où vient la lumière en profondeur, que le modèle simplifie",
    how_to_shrink: "Mesurez la lumière en profondeur.",
  }),
  reference_sun: () => ({
    text: "Le soleil sous lequel l’atténuation de cette eau a été mesurée",
    how_to_shrink:
      "Le jour même, mesurez l’atténuation ou photographiez une charte grise à deux profondeurs.",
  }),
  overhead: () => ({
    text: "La lumière du jour qui pénètre sous ce qui vous surplombe",
    how_to_shrink:
      "Mesurez sur une charte grise à cet endroit et en pleine eau, et donnez le rapport des deux ; sous la glace, donnez son épaisseur et celle de la neige.",
  }),
  sea_floor: () => ({
    text: "La clarté du fond",
    how_to_shrink: "Indiquez la nature du fond et sa profondeur, ou donnez sa réflectance.",
  }),
  filter_edge: () => ({
    text: "Les couleurs que ce filtre prend vraiment : le calcul suit son type",
    how_to_shrink:
      "Photographiez une charte grise à la lumière du jour avec et sans lui, ou donnez sa courbe.",
  }),
  filter_width: () => ({
    text: "Ce que ce filtre prend des couleurs voisines : le calcul suit son type",
    how_to_shrink:
      "Photographiez une charte grise à la lumière du jour avec et sans lui, ou donnez sa courbe.",
  }),
  filter_density: () => ({
    text: "La densité de ce filtre : des photos d’une charte ne la donnent qu’à peu près",
    how_to_shrink: "Donnez sa courbe.",
  }),
  full_well: () => ({
    text: "La lumière qu’un pixel du capteur recueille avant de saturer",
    how_to_shrink: "Rien à faire : cela varie d’un appareil à l’autre.",
  }),
};

const perWater: CauseText = {
  text: "À quel point cette eau est trouble",
  how_to_shrink: "Dites jusqu’où l’on y voit.",
};

const asSeen: CauseText = {
  text: "La distance où vous voyez vraiment, dont découle la diffusion",
  how_to_shrink: "Mesurez la visibilité le long d’un fil gradué.",
};

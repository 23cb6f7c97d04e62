import type { CircumstanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, wholeStops } from "../format.js";

/** Ce que la lumière, le lieu et l’appareil d’une plongée demandent en plus du plan. */
export const circumstanceReasons: Texts<CircumstanceReasons, string> = {
  dense_for_balance: (p, u) =>
    `Il faut un filtre aussi dense parce que la balance des blancs de l’appareil a ses limites : avec lui, une charte sort neutre jusqu’à ${depth(p.with_m, u)} environ ; sans lui, ${p.without ? `seulement jusqu’à ${depth(p.without.to_m, u)}` : "nulle part pendant cette plongée"}. Un filtre plus faible épargne de la lumière et laisse plus de dominante, d’abord en profondeur.`,
  mouth_is_brighter: (p) =>
    `Vers la sortie, l’eau du dehors est plus claire d’environ ${wholeStops(p.stops)} que ce que vous filmez dedans. Pour une sortie bleue cernée de roche sombre, exposez pour l’eau et laissez le reste devenir noir.${p.lamps ? ` Pour une plongée plus loin dedans, où il y a plus de ${wholeStops(p.lamps.spare_stops)} de lumière en moins, laissez le filtre à terre et filmez aux phares vidéo.` : ""}`,
  filter_beside_lights: () =>
    "Ici, vos phares vidéo ne dominent pas la lumière du jour : ils apportent du rouge, et le filtre retient le bleu et le vert que le jour a en trop. Là où ils la dominent, de plus près, vous filmeriez sans filtre.",
  subject_against_light: (p) =>
    `À contre-jour, l’image entière est plus claire d’environ ${wholeStops(p.stops)} qu’un sujet gris. Ce plan montre le sujet en couleur, et l’eau derrière lui sort pâle. Pour une silhouette, fermez d’autant et exposez pour l’eau ; la balance des blancs et le filtre ne comptent alors presque plus.`,
  low_sun_moves: (p) =>
    `Avec le soleil à ${shown(p.elevation_deg)} degrés, la lumière change vite, même à profondeur égale. Refaites l’exposition et la balance des blancs toutes les dix minutes.`,
  cloud_lights_evenly: () =>
    "Sous un ciel couvert, la lumière vient d’en haut de façon égale : l’orientation ne compte presque pas, et les images sont plates. Si le soleil perce, refaites l’exposition et la balance des blancs.",
  weed_tints: () =>
    "Les algues avalent la lumière et teintent ce qu’il en reste : sous elles, refaites l’exposition et la balance des blancs, et cherchez les trouées par où la lumière descend.",
  blue_is_missing: (p, u) =>
    `Dans cette eau, c’est le bleu qui manque, plus que le rouge : à ${depth(p.depth_m, u)}, c’est ce que l’appareil reçoit le moins. Aucun filtre n’en ajoute. Celui-ci retient le vert, pour que l’appareil puisse remonter le bleu comme le rouge.`,
  automatic_colours: (p) =>
    `Les couleurs automatiques réussissent mieux avec peu d’eau dans l’image : approchez-vous${p.sun_behind ? ", gardez le soleil dans le dos" : ""} et remplissez le cadre avec le sujet. À la retouche, placez le point blanc sur ce qui était gris ou blanc au fond : du sable clair, une ardoise, un bloc.`,
};

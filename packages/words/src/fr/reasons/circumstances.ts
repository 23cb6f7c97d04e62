import type { CircumstanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, wholeStops } from "../format.js";

/** Ce que la lumière, le lieu et l’appareil d’une plongée demandent en plus du plan. */
export const circumstanceReasons: Texts<CircumstanceReasons, string> = {
  dense_for_balance: (p, u) =>
    `Un filtre aussi dense sert à la balance des blancs : avec lui, une charte sort neutre jusqu’à ${depth(p.with_m, u)} environ ; sans lui, ${p.without ? `seulement jusqu’à ${depth(p.without.to_m, u)}` : "nulle part"}.`,
  mouth_is_brighter: (p) =>
    `Vers la sortie, l’eau est plus claire d’environ ${wholeStops(p.stops)} : pour un bleu cerné de noir, exposez pour elle.${p.lamps ? ` Plus loin dedans, à plus de ${wholeStops(p.lamps.spare_stops)} de lumière en moins, filmez sans filtre, aux phares vidéo.` : ""}`,
  subject_against_light: (p) =>
    `À contre-jour, l’image est plus claire d’environ ${wholeStops(p.stops)} que le sujet. Pour une silhouette, fermez d’autant : le filtre et la balance des blancs ne comptent alors presque plus.`,
  low_sun_moves: (p) =>
    `Avec le soleil à ${shown(p.elevation_deg)} degrés, la lumière change vite : refaites l’exposition et la balance des blancs toutes les dix minutes.`,
  cloud_lights_evenly: () =>
    "Sous un ciel couvert, l’orientation ne compte presque pas, et les images sont plates. Si le soleil perce, refaites l’exposition et la balance des blancs.",
  weed_tints: () =>
    "Les algues avalent la lumière et teintent le reste : dessous, refaites l’exposition et la balance des blancs.",
  blue_is_missing: () =>
    "Dans cette eau, c’est le bleu qui manque, plus que le rouge, et aucun filtre n’en ajoute. Celui-ci retient le vert, pour que l’appareil remonte les deux.",
  automatic_colours: (p) =>
    `Les couleurs automatiques demandent peu d’eau dans l’image : approchez-vous${p.sun_behind ? ", le soleil dans le dos" : ""}. À la retouche, placez le point blanc sur du sable clair, une ardoise ou un bloc.`,
};

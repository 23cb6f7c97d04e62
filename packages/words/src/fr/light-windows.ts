import type { LightWindowReasons, WindowAim } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { percent, shown, stops } from "./format.js";

const AIMS: Readonly<Record<WindowAim, string>> = {
  natural_colour: "la couleur naturelle et la lumière du jour qui descend sur le sujet",
  sunlit_background: "la couleur et la lumière de l’eau libre derrière le sujet",
  lamps_lead: "la couleur et l’avance de vos phares vidéo sur la lumière du jour",
};

/** Ce qui couvre le ciel, en huitièmes. */
const clouds = (oktas: number): string => {
  if (oktas === 0) return " dans un ciel dégagé";
  if (oktas === 8) return " derrière un ciel entièrement couvert";
  return oktas === 1 ? ", avec un huitième de nuages" : `, avec ${shown(oktas)} huitièmes de nuages`;
};

const sky = (p: { elevation_deg: number; cloud_oktas: number }): string =>
  `le soleil est à ${shown(p.elevation_deg)} degrés${clouds(p.cloud_oktas)}`;

const colour = (delta_e00: number): string =>
  Math.abs(delta_e00) < 0.05
    ? "la même erreur de couleur"
    : `${shown(Math.abs(delta_e00), 1)} d’erreur de couleur en ${delta_e00 > 0 ? "plus" : "moins"}`;

const light = (less_stops: number): string =>
  Math.abs(less_stops) < 1 / 6
    ? "à peu près la même lumière"
    : `${stops(Math.abs(less_stops))} en ${less_stops > 0 ? "moins" : "plus"} de la lumière que vous cherchez`;

/** Pourquoi les créneaux de lumière sont là où ils sont. */
export const lightWindowReasons: Texts<LightWindowReasons, string> = {
  window_best: (p) => `Le meilleur de la journée : ${sky(p)}.`,
  window_only: (p) => `Le seul créneau de la journée avec assez de soleil : ${sky(p)}.`,
  window_behind: (p) =>
    `Face au meilleur de la journée : ${colour(p.more_delta_e00)} et ${light(p.less_stops)}.`,
  window_as_good: (p) =>
    `Aussi bon que le meilleur de la journée, pour autant qu’on puisse en juger : ${colour(p.more_delta_e00)} et ${light(p.less_stops)}.`,
  windows_ranked: (p) =>
    `Les créneaux sont classés selon ${AIMS[p.aim]}. Un IL de lumière pèse autant que ${percent(p.percent_per_stop)} de l’erreur de couleur.`,
  windows_sky_assumed: (p) =>
    `Pour ${p.days} ${p.days === 1 ? "jour" : "jours"} sur ${p.of_days}, il manque la prévision de certaines heures : le ciel y est supposé dégagé. Envoyez votre prévision quand le jour approche.`,
  windows_forecast_unused: (p) =>
    `${p.entries} ${p.entries === 1 ? "entrée" : "entrées"} de la prévision ne ${p.entries === 1 ? "concerne" : "concernent"} aucun créneau : un autre jour, une heure hors des heures d’ouverture, ou un jour dont toutes les heures sont données.`,
  windows_sun_too_low: (p) =>
    `${p.windows} ${p.windows === 1 ? "créneau est écarté" : "créneaux sont écartés"} : une partie du temps, le soleil est sous ${shown(p.min_elevation_deg)} degrés, où ce modèle ne vaut plus.`,
  windows_interpolated: (p) =>
    `Les valeurs sont calculées pour des hauteurs fixes du soleil et reliées en ligne droite : l’erreur de couleur est juste à ${shown(p.delta_e00, 2)} près, la lumière à ${shown(p.stops, 1)} IL près.`,
  windows_spread_shared: () =>
    "L’incertitude des valeurs a été calculée pour le meilleur créneau et reprise pour les autres.",
};

import type { ClipReasons, MomentReasons, TimelineReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import type { CueLines } from "../trip-texts.js";
import { settings } from "./dial.js";
import { between, castOf, depth, depths, percent, shown, stops } from "./format.js";

const minutes = (seconds: number): string => {
  if (seconds < 90) return `${shown(seconds)} ${Math.round(seconds) <= 1 ? "seconde" : "secondes"}`;
  return `${shown(seconds / 60)} minutes`;
};

/** Pourquoi il fallait régler l’appareil à un moment de la plongée. */
export const momentReasons: Texts<MomentReasons, string> = {
  moment_first_balance: () => "Faites la balance des blancs ici, avant de filmer.",
  moment_balance_again: (p) =>
    `Faites une balance des blancs ici : la dernière laisse ${castOf(p.shift_delta_e00)} qu’une nouvelle enlève.`,
  moment_balance_done: (p) =>
    p.shift_delta_e00 > p.tolerance_delta_e00
      ? `Cette balance des blancs s’imposait : elle a enlevé ${castOf(p.shift_delta_e00)}.`
      : "Cette balance des blancs est venue trop tôt : la précédente tenait encore.",
  moment_balance_behind_change: () =>
    "Le filtre a changé : la balance des blancs d’avant ne vaut plus rien derrière lui.",
  moment_filter_on: (p, u) => `Le filtre se met sur l’objectif, à ${depth(p.depth_m, u)}.`,
  moment_filter_off: (p, u) => `Le filtre se retire de l’objectif, à ${depth(p.depth_m, u)}.`,
  moment_exposure: (p) =>
    `Réglez de nouveau l’exposition : il y a ${stops(Math.abs(p.stops))} de lumière en ${p.stops > 0 ? "plus" : "moins"} par rapport au dernier réglage.`,
};

/** Où en est la balance d’un plan filmé. */
export const clipReasons: Texts<ClipReasons, string> = {
  clip_balance_held: () =>
    "La dernière balance des blancs tient sur tout le plan : une nouvelle aurait peu apporté.",
  clip_balance_close: (p) =>
    `Impossible de dire si la dernière balance des blancs tient encore : ${castOf(p.shift_delta_e00)} s’est installée depuis, aux incertitudes près sur l’eau et l’appareil.`,
  clip_balance_lost: (p) =>
    p.after_s < 1
      ? `La dernière balance des blancs ne tient plus au début du plan : une nouvelle aurait enlevé ${castOf(p.shift_delta_e00)}. Étalonnez-le à part.`
      : `La dernière balance des blancs ne tient plus après ${minutes(p.after_s)} de ce plan : une nouvelle aurait enlevé ${castOf(p.shift_delta_e00)}. Étalonnez cette partie à part.`,
  clip_balance_not_set: () => "Aucune balance des blancs n’a été faite avant ce plan.",
};

/** Sur quoi repose la chronologie. */
export const timelineReasons: Texts<TimelineReasons, string> = {
  timeline_as_planned: () =>
    "Vous n’avez indiqué aucun événement : on suppose le filtre et la balance des blancs conformes au plan de cette plongée, aux moments où vous passiez par ces profondeurs.",
  timeline_as_done: (p) =>
    p.events === 0
      ? "Vous dites n’avoir touché ni au filtre ni à la balance des blancs : les plans filmés sont jugés d’après cela."
      : `Les plans filmés sont jugés d’après ce que vous avez fait : ${shown(p.events)} ${p.events === 1 ? "événement" : "événements"}.`,
  timeline_filmed: (p, u) =>
    p.clips === 0
      ? `Vous n’avez indiqué aucun plan filmé : les conseils valent ${between(p.min_depth_m, p.max_depth_m, u)}.`
      : `Les conseils valent pour les profondeurs de vos plans filmés, ${between(p.min_depth_m, p.max_depth_m, u)}.`,
  timeline_not_passed: (p, u) =>
    `Le plan prévoit des étapes à ${depths(p.depths_m, u)}, où la plongée n’est pas revenue : elles sont omises.`,
  timeline_exposures_left_out: (p) =>
    `La lumière a changé si souvent que ${shown(p.moments)} ${p.moments === 1 ? "nouvelle exposition est omise" : "nouvelles expositions sont omises"}.`,
  timeline_drawn: (p) =>
    `La lumière est calculée à des profondeurs et des heures fixes, et reliée par des droites : elle est juste à ${shown(p.stops, 2)} IL près.`,
  timeline_spread_shared: () =>
    "L’incertitude des valeurs est calculée pour le milieu de la plongée, et reprise pour toute sa durée.",
};

/** Lignes d’un sous-titre. */
export const cueLines: Texts<CueLines, string> = {
  cue_title: () => "La lumière de cette plongée, plan par plan",
  cue_depths: (p, u) => `Filmé ${between(p.min_depth_m, p.max_depth_m, u)}`,
  cue_light: (p) =>
    `IL ${shown(p.ev100.likely, 1)} à 100 ISO (de ${shown(p.ev100.low, 1)} à ${shown(p.ev100.high, 1)})`,
  cue_settings: (p) => `Réglage : ${settings(p)}`,
  cue_red: (p) =>
    `Rouge restant : ${percent(p.percent.likely)} (de ${shown(p.percent.low)} à ${percent(p.percent.high)})`,
};

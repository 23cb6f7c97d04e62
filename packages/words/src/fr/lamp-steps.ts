import type { LampStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { filterName, takeOff, theFilter } from "./filter-name.js";
import {
  capital,
  castOf,
  depth,
  distance,
  errorFall,
  fromTo,
  partOfBrightness,
  small,
  stops,
  strength,
  tooRed,
  wholeStops,
} from "./format.js";
import { waysOut } from "./ways-out.js";

/** Ce qu’on fait des phares vidéo, et pourquoi. */
export const lampSteps: Texts<LampStepCodes, StepText> = {
  filter_lamps: (p) => ({
    text: `${takeOff(p)}Mettez ${filterName(p.filter)} sur chaque phare vidéo.`,
    why: `Il accorde leur lumière à celle du jour en profondeur et laisse ${castOf(p.left)}.`,
  }),
  keep_lamp_filters: (p) => ({
    text: `Laissez ${theFilter(p.filter)} sur les phares vidéo.`,
    why: `Avec lui, leur lumière montre ${castOf(p.left)} par rapport à celle du jour.`,
  }),
  bare_lamps: (p) => ({
    text: `Retirez ${theFilter(p.filter)} des phares vidéo.`,
    why: `Ici les phares dominent : il n’y a pas de lumière du jour à égaler, et le filtre coûte de la lumière.`,
  }),
  lamps_off: (p, u) => ({
    text: `Laissez les phares vidéo éteints.${p.fitted ? ` Ils portent en ce moment ${filterName(p.fitted)}.` : ""}${p.other ? ` Si vous les voulez allumés : ${small(textOf(waysOut, p.other.way, u))}` : ""}`,
    why: `La lumière du jour colore toute l’image, les phares seulement ce qu’ils éclairent, et une balance des blancs ne convient pas aux deux : faite à la lumière du jour, elle laisse ${castOf(p.split)}${tooRed(p.red_excess)} sur tout ce qu’ils éclairent. Le sujet a ${stops(p.cost)} de lumière en moins.${p.other ? ` Allumés de cette façon, ils laissent ${castOf(p.other.left)}.` : ""}`,
  }),
  lamps_for_subject: (p) => ({
    text: "Pour une plongée de gros plans seulement, où ne compte que ce que les phares éclairent : pas de filtre sur l’objectif, phares vidéo allumés, balance des blancs sur la charte à leur lumière.",
    why: `Il reste alors une erreur de couleur ${strength(p.error)} sur le sujet, et ${strength(p.around)} autour.`,
  }),
  lamps_from: (p, u) => ({
    text: `À partir de ${depth(p.depth_m, u)}, vous pouvez les allumer : refaites alors la balance des blancs sur une charte éclairée par eux.`,
    why: "Là, vos phares vidéo dominent la lumière du jour sur le sujet.",
  }),
  lamps_on: (p, u) => ({
    text: `Une fois sous l’eau, allumez les phares vidéo, à ${distance(p.distance_m, u)} de l’endroit où sera le sujet.${p.wide ? " Tenez-les loin de l’objectif, pour laisser dans le noir les particules qui sont juste devant." : ""}`,
    why: "L’exposition et la balance des blancs se règlent à leur lumière.",
  }),
  lamps_lead: (p) => ({
    text: `Gardez le sujet dans la lumière des phares vidéo.${wide(p)}`,
    why: `Sur le sujet, ils dépassent la lumière du jour de ${wholeStops(p.green)}.`,
  }),
  lamps_hardly_show: (p, u) => ({
    text: `${p.haze ? "Éteignez les phares vidéo : ils n’éclaireraient guère que des particules." : "Vous pouvez laisser les phares vidéo allumés."}${p.fight ? ` ${capital(fromTo(p.fight.from_m, p.fight.to_m, u))}, ils se contrarient avec la lumière du jour : n’y utilisez que l’un des deux.` : ""}`,
    why: `La lumière du jour dépasse celle des phares vidéo de ${wholeStops(-p.green)} : ils ne se voient presque pas.`,
  }),
  lamps_with_daylight: (p) => ({
    text: `Laissez les phares vidéo allumés, à la même distance du sujet que pour la balance des blancs ; refaites-la si cette distance change : plus près d’eux, tout devient plus rouge.${p.unused ? ` N’y mettez pas ${theFilter(p.unused)}.` : ""}${wide(p)}`,
    why: `Par rapport aux phares éteints, le mélange des deux lumières ${errorFall(p.without_e, p.with_e)} sur l’ensemble de l’image. Ce que les phares n’atteignent pas montre ${castOf(p.unlit)} de la couleur de l’eau.${p.unused ? " Accordés à la lumière du jour par un filtre, ils n’apporteraient pas de rouge." : ""}`,
  }),
  lamps_only: (p) => ({
    text: `Gardez les phares et le sujet à la distance où vous avez fait la balance des blancs.${wide(p)}`,
    why: `L’eau traversée prend surtout du ${p.blue > p.red ? "bleu" : "rouge"} : à une autre distance, cette balance ne convient plus.`,
  }),
  lamps_reach: (p, u) => ({
    text: p.daylight
      ? `Les phares vidéo portent à ${depth(p.dark_m, u)} environ. Ce qui est plus loin n’a que la lumière du jour : ${wholeStops(p.daylight.stops)} de moins, et la couleur de l’eau.`
      : `Les phares vidéo portent à ${depth(p.dark_m, u)} environ : ce qui est plus loin reste noir dans l’image.`,
    why: "Leur lumière s’étale avec la distance, et l’eau en prend sa part à l’aller et au retour.",
  }),
  mixing_zone: (p, u) => ({
    text: `${capital(fromTo(p.from_m, p.to_m, u))}, les phares vidéo et la lumière du jour se contrarient : n’y utilisez que l’une des deux lumières.`,
    why: "Aucune balance des blancs ne rend les deux neutres.",
  }),
};

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Écartez les phares de l’objectif et tournez-les vers l’extérieur : les particules auraient sinon environ ${partOfBrightness(p.haze.percent)} d’un sujet gris.`
    : "";

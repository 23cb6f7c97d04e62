import type { LampStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts, TextUnits } from "../problems/texts.js";
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
} from "./format.js";
import { waysOut } from "./ways-out.js";

/** Ce qu’on fait des phares vidéo, et pourquoi. */
export const lampSteps: Texts<LampStepCodes, StepText> = {
  check_lamps: (p, u) => ({ text: CHECK_LIGHTS, why: lightNeeded(p, u) }),
  filter_lamps: (p, u) => ({
    text: `${takeOff(p)}Mettez ${filterName(p.filter)} sur chaque phare vidéo.${checked(p)}`,
    why: `Il accorde leur lumière à celle du jour en profondeur et laisse ${castOf(p.left)}.${needed(p, u)}`,
  }),
  keep_lamp_filters: (p, u) => ({
    text: `Laissez ${theFilter(p.filter)} sur les phares vidéo.${checked(p)}`,
    why: `Avec lui, leur lumière montre ${castOf(p.left)} par rapport à celle du jour.${needed(p, u)}`,
  }),
  bare_lamps: (p, u) => ({
    text: `Retirez ${theFilter(p.filter)} des phares vidéo.${checked(p)}`,
    why: `Ici les phares dominent : il n’y a pas de lumière du jour à égaler, et le filtre coûte de la lumière.${needed(p, u)}`,
  }),
  lamps_off: (p, u) => ({
    text: `Laissez les phares vidéo éteints, sur le caisson.${p.fitted ? ` Ils portent en ce moment ${filterName(p.fitted)}.` : ""}${p.other ? ` Si vous les voulez allumés : ${small(textOf(waysOut, p.other.way, u))}` : ""}`,
    why: `Une balance des blancs ne convient pas aux deux lumières : faite à la lumière du jour, elle laisse ${castOf(p.split)}${tooRed(p.red_excess)} sur tout ce que les phares éclairent. Sans eux, le sujet a ${stops(p.cost)} de lumière en moins.${p.other ? ` Allumés de cette façon, ils laissent ${castOf(p.other.left)}.` : ""}`,
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
    why: `Sur le sujet, ils dépassent la lumière du jour de ${stops(p.green)} dans le vert.`,
  }),
  lamps_hardly_show: (p) => ({
    text: p.haze
      ? "Éteignez les phares vidéo : ils n’éclaireraient guère que des particules."
      : "Vous pouvez laisser les phares vidéo allumés.",
    why: `La lumière du jour dépasse celle des phares vidéo de ${stops(-p.green)} dans le vert : ils ne se voient presque pas.`,
  }),
  lamps_with_daylight: (p) => ({
    text: `Laissez les phares vidéo allumés, à la même distance du sujet que pour la balance des blancs ; refaites-la si cette distance change.${p.unused ? ` N’y mettez pas ${theFilter(p.unused)}.` : ""}${wide(p)}`,
    why: `Par rapport aux phares éteints, le mélange des deux lumières ${errorFall(p.without_e, p.with_e)} sur l’ensemble de l’image. Ce que les phares n’atteignent pas montre ${castOf(p.unlit)} de la couleur de l’eau.${p.unused ? " Accordés à la lumière du jour par un filtre, ils n’apporteraient pas de rouge." : ""}`,
  }),
  lamps_only: (p) => ({
    text: `Gardez les phares et le sujet à la distance où vous avez fait la balance des blancs.${wide(p)}`,
    why: `L’eau traversée coûte ${stops(p.red)} de rouge, ${stops(p.green)} de vert et ${stops(p.blue)} de bleu.`,
  }),
  lamps_reach: (p, u) => ({
    text: p.daylight
      ? `Les phares vidéo portent à ${depth(p.dark_m, u)} environ. Ce qui est plus loin n’a que la lumière du jour : ${stops(p.daylight.stops)} de moins, et la couleur de l’eau.`
      : `Les phares vidéo portent à ${depth(p.dark_m, u)} environ : ce qui est plus loin reste noir dans l’image.`,
    why: "Leur lumière s’étale avec la distance, et l’eau en prend sa part à l’aller et au retour.",
  }),
  mixing_zone: (p, u) => ({
    text: `${capital(fromTo(p.from_m, p.to_m, u))}, les phares vidéo et la lumière du jour se contrarient : n’y utilisez que l’une des deux lumières.`,
    why: "Aucune balance des blancs ne rend les deux neutres.",
  }),
};

const CHECK_LIGHTS = "Chargez et vérifiez les phares vidéo ; essayez-les dans l’eau, pas à l’air.";
const lightNeeded = (p: { distance_m: number }, u?: TextUnits): string =>
  `Le plan compte sur toute leur lumière, à ${distance(p.distance_m, u)} du sujet.`;
/** La même chose à côté de ce qu’on fait d’autre avec eux. */
const checked = ({ check }: { check?: object }): string => (check ? ` ${CHECK_LIGHTS}` : "");
const needed = ({ check }: { check?: { distance_m: number } }, u?: TextUnits): string =>
  check ? ` ${lightNeeded(check, u)}` : "";

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Écartez les phares de l’objectif et tournez-les vers l’extérieur : les particules auraient sinon environ ${partOfBrightness(p.haze.percent)} d’un sujet gris.`
    : "";

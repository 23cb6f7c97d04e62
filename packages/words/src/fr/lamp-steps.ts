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
  fromTo,
  grouped,
  partOfBrightness,
  redder,
  small,
  stops,
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
    why: `Avec la balance des blancs faite à la lumière du jour, tout ce qu’ils éclairent prendrait ${castOf(p.split)}, ${redder(p.red_excess)}. Sans eux, le sujet perd ${stops(p.cost)}.${p.other ? ` L’autre solution laisse ${castOf(p.other.left)}.` : ""}`,
  }),
  lamps_from: (p, u) => ({
    text: `À partir de ${depth(p.depth_m, u)}, vous pouvez les allumer : refaites alors la balance des blancs sur une charte éclairée par eux.`,
    why: "Là, vos phares vidéo dominent la lumière du jour sur le sujet.",
  }),
  lamps_lead: (p) => ({
    text: `Allumez les phares vidéo et gardez le sujet dans leur lumière.${wide(p)}`,
    why: `Sur le sujet, ils dominent la lumière du jour de ${stops(p.green)} dans le vert.`,
  }),
  lamps_hardly_show: (p) => ({
    text: p.haze
      ? "Éteignez les phares vidéo : ils n’éclaireraient guère que des particules."
      : "Vous pouvez laisser les phares vidéo allumés.",
    why: `La lumière du jour domine les phares vidéo de ${stops(-p.green)} dans le vert : leur lumière ne se voit presque pas.`,
  }),
  lamps_only: (p) => ({
    text: `Gardez les phares et le sujet à la distance où vous avez fait la balance des blancs.${wide(p)}`,
    why: `L’eau traversée coûte ${stops(p.red)} de rouge, ${stops(p.green)} de vert et ${stops(p.blue)} de bleu.`,
  }),
  mixing_zone: (p, u) => ({
    text: `${capital(fromTo(p.from_m, p.to_m, u))}, les phares vidéo et la lumière du jour se contrarient : n’y utilisez que l’un des deux.`,
    why: "Aucune balance des blancs ne les rend neutres tous les deux.",
  }),
};

const CHECK_LIGHTS = "Chargez et vérifiez les phares vidéo ; essayez-les dans l’eau, pas à l’air.";
const lightNeeded = (p: { lux: number; distance_m: number }, u?: TextUnits): string =>
  `Il vous faut environ ${grouped(Number(p.lux.toPrecision(2)))} lx sur le sujet à ${distance(p.distance_m, u)}.`;
/** La même chose à côté de ce qu’on fait d’autre avec eux. */
const checked = ({ check }: { check?: object }): string => (check ? ` ${CHECK_LIGHTS}` : "");
const needed = ({ check }: { check?: { lux: number; distance_m: number } }, u?: TextUnits): string =>
  check ? ` ${lightNeeded(check, u)}` : "";

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Écartez les phares de l’objectif et tournez-les vers l’extérieur, pour que seul le bord du faisceau touche le sujet : les particules auraient environ ${partOfBrightness(p.haze.percent)} d’un sujet gris.`
    : "";

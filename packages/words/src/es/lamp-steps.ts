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

/** Qué se hace con los focos de vídeo, y por qué. */
export const lampSteps: Texts<LampStepCodes, StepText> = {
  check_lamps: (p, u) => ({ text: CHECK_LIGHTS, why: lightNeeded(p, u) }),
  filter_lamps: (p, u) => ({
    text: `${takeOff(p)}Ponga ${filterName(p.filter)} en cada foco de vídeo.${checked(p)}`,
    why: `Iguala su luz a la del día a profundidad y deja ${castOf(p.left)}.${needed(p, u)}`,
  }),
  keep_lamp_filters: (p, u) => ({
    text: `Deje ${theFilter(p.filter)} en los focos de vídeo.${checked(p)}`,
    why: `Con él, su luz muestra ${castOf(p.left)} frente a la del día.${needed(p, u)}`,
  }),
  bare_lamps: (p, u) => ({
    text: `Quite ${theFilter(p.filter)} de los focos de vídeo.${checked(p)}`,
    why: `Aquí mandan los focos: no hay luz del día con la que casar, y el filtro quita luz.${needed(p, u)}`,
  }),
  lamps_off: (p, u) => ({
    text: `Deje los focos de vídeo apagados y montados en el equipo.${p.fitted ? ` Ahora llevan ${filterName(p.fitted)}.` : ""}${p.other ? ` Si aun así los quiere encendidos: ${small(textOf(waysOut, p.other.way, u))}` : ""}`,
    why: `Con el balance hecho a la luz del día, todo lo que alcanzan mostraría ${castOf(p.split)}, ${redder(p.red_excess)}. Sin ellos, el motivo pierde ${stops(p.cost)}.${p.other ? ` La otra opción deja ${castOf(p.other.left)}.` : ""}`,
  }),
  lamps_from: (p, u) => ({
    text: `A partir de ${depth(p.depth_m, u)} puede encenderlos: haga entonces otro balance de blancos con una tarjeta iluminada por ellos.`,
    why: "Ahí sus focos de vídeo superan a la luz del día en el motivo.",
  }),
  lamps_lead: (p) => ({
    text: `Encienda los focos de vídeo y mantenga el motivo dentro de su luz.${wide(p)}`,
    why: `En el motivo superan a la luz del día en ${stops(p.green)} de verde.`,
  }),
  lamps_hardly_show: (p) => ({
    text: p.haze
      ? "Apague los focos de vídeo: mostrarían poco más que backscatter."
      : "Puede dejar encendidos los focos de vídeo.",
    why: `La luz del día supera a los focos de vídeo en ${stops(-p.green)} de verde: apenas se notan.`,
  }),
  lamps_only: (p) => ({
    text: `Mantenga los focos y el motivo a la misma distancia a la que hizo el balance de blancos.${wide(p)}`,
    why: `El agua de por medio cuesta ${stops(p.red)} de rojo, ${stops(p.green)} de verde y ${stops(p.blue)} de azul.`,
  }),
  mixing_zone: (p, u) => ({
    text: `${capital(fromTo(p.from_m, p.to_m, u))}, los focos de vídeo y la luz del día no casan: use ahí solo una de las dos luces.`,
    why: "Ningún balance de blancos deja neutras las dos a la vez.",
  }),
};

const CHECK_LIGHTS = "Cargue y compruebe los focos de vídeo; pruébelos en el agua, no en el aire.";
const lightNeeded = (p: { lux: number; distance_m: number }, u?: TextUnits): string =>
  `Hacen falta unos ${grouped(Number(p.lux.toPrecision(2)))} lx en el motivo a ${distance(p.distance_m, u)}.`;
/** Lo mismo, junto a otra cosa que se hace con ellos. */
const checked = ({ check }: { check?: object }): string => (check ? ` ${CHECK_LIGHTS}` : "");
const needed = ({ check }: { check?: { lux: number; distance_m: number } }, u?: TextUnits): string =>
  check ? ` ${lightNeeded(check, u)}` : "";

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Mantenga los focos lejos del objetivo y oriéntelos hacia fuera, para que solo el borde del haz llegue al motivo: el backscatter tendría más o menos ${partOfBrightness(p.haze.percent)} de un motivo gris.`
    : "";

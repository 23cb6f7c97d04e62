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

/** Qué se hace con los focos de vídeo, y por qué. */
export const lampSteps: Texts<LampStepCodes, StepText> = {
  filter_lamps: (p) => ({
    text: `${takeOff(p)}Ponga ${filterName(p.filter)} en cada foco de vídeo.`,
    why: `Iguala su luz a la luz del día de esa profundidad y deja ${castOf(p.left)}.`,
  }),
  keep_lamp_filters: (p) => ({
    text: `Deje ${theFilter(p.filter)} en los focos de vídeo.`,
    why: `Con él, su luz muestra ${castOf(p.left)} frente a la del día.`,
  }),
  bare_lamps: (p) => ({
    text: `Quite ${theFilter(p.filter)} de los focos de vídeo.`,
    why: `Aquí mandan los focos: no hay luz del día con la que casar, y el filtro quita luz.`,
  }),
  lamps_off: (p, u) => ({
    text: `Deje los focos de vídeo apagados.${p.fitted ? ` Ahora llevan ${filterName(p.fitted)}.` : ""}${p.other ? ` Si aun así los quiere encendidos: ${small(textOf(waysOut, p.other.way, u))}` : ""}`,
    why: `La luz del día da color a toda la imagen, los focos solo a lo que alcanzan, y un balance de blancos no sirve para las dos luces: hecho a la luz del día, deja ${castOf(p.split)}${tooRed(p.red_excess)} en todo lo que alcanzan. El motivo tiene ${stops(p.cost)} menos de luz.${p.other ? ` Encendidos de esa manera, dejan ${castOf(p.other.left)}.` : ""}`,
  }),
  lamps_for_subject: (p) => ({
    text: "Para una inmersión solo de primeros planos, en la que únicamente cuenta lo que iluminan los focos: objetivo sin filtro, focos de vídeo encendidos y balance de blancos con la tarjeta a su luz.",
    why: `Así queda un error de color ${strength(p.error)} en el motivo y uno ${strength(p.around)} a su alrededor.`,
  }),
  lamps_from: (p, u) => ({
    text: `A partir de ${depth(p.depth_m, u)} puede encenderlos: haga entonces otro balance de blancos con una tarjeta iluminada por ellos.`,
    why: "Ahí sus focos de vídeo superan a la luz del día en el motivo.",
  }),
  lamps_on: (p, u) => ({
    text: `Ya bajo el agua, encienda los focos de vídeo, a ${distance(p.distance_m, u)} de donde estará el motivo.${p.wide ? " Manténgalos lejos del objetivo, para que las partículas que tiene delante queden a oscuras." : ""}`,
    why: "La exposición y el balance de blancos se ajustan a su luz.",
  }),
  lamps_lead: (p) => ({
    text: `Mantenga el motivo dentro de la luz de los focos de vídeo.${wide(p)}`,
    why: `En el motivo superan a la luz del día en ${wholeStops(p.green)}.`,
  }),
  lamps_hardly_show: (p, u) => ({
    text: `${p.haze ? "Apague los focos de vídeo: mostrarían poco más que partículas (backscatter)." : "Puede dejar encendidos los focos de vídeo."}${p.fight ? ` ${capital(fromTo(p.fight.from_m, p.fight.to_m, u))} no casan con la luz del día: use ahí solo una de las dos luces.` : ""}`,
    why: `La luz del día supera a los focos de vídeo en ${wholeStops(-p.green)}: apenas se notan.`,
  }),
  lamps_with_daylight: (p) => ({
    text: `Deje encendidos los focos de vídeo, a la misma distancia del motivo que en el balance de blancos; si cambia, hágalo de nuevo: más cerca de ellos todo sale más rojo.${p.unused ? ` No les ponga ${theFilter(p.unused)}.` : ""}${wide(p)}`,
    why: `Frente a los focos apagados, la mezcla de las dos luces ${errorFall(p.without_e, p.with_e)} en el conjunto de la imagen. Lo que los focos no alcanzan muestra ${castOf(p.unlit)} del color del agua.${p.unused ? " Igualados a la luz del día con un filtro, no aportarían rojo." : ""}`,
  }),
  lamps_only: (p) => ({
    text: `Mantenga los focos y el motivo a la misma distancia a la que hizo el balance de blancos.${wide(p)}`,
    why: `El agua de por medio quita sobre todo ${p.blue > p.red ? "azul" : "rojo"}: a otra distancia, ese balance de blancos ya no sirve.`,
  }),
  lamps_reach: (p, u) => ({
    text: p.daylight
      ? `Los focos de vídeo iluminan hasta más o menos ${depth(p.dark_m, u)} de distancia. Lo que está más lejos solo recibe la luz del día: sale ${wholeStops(p.daylight.stops)} más oscuro y del color del agua.`
      : `Los focos de vídeo iluminan hasta más o menos ${depth(p.dark_m, u)} de distancia: lo que está más lejos queda negro en la imagen.`,
    why: "Su luz se reparte con la distancia, y el agua se queda con su parte a la ida y a la vuelta.",
  }),
  mixing_zone: (p, u) => ({
    text: `${capital(fromTo(p.from_m, p.to_m, u))}, los focos de vídeo y la luz del día no casan: use ahí solo una de las dos luces.`,
    why: "Ningún balance de blancos deja neutras las dos a la vez.",
  }),
};

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Mantenga los focos lejos del objetivo y oriéntelos hacia fuera: si no, el backscatter tendría ${partOfBrightness(p.haze.percent)} de un motivo gris.`
    : "";

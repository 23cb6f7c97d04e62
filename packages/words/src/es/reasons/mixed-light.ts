import type { MixedLightReasons } from "@sunfathom/planner";
import type { Texts, TextUnits } from "../../problems/texts.js";
import {
  brightness,
  capital,
  castOf,
  depth,
  distance,
  fromTo,
  lumens,
  partOfBrightness,
  redder,
  stops,
} from "../format.js";

function haveThem({ verdict, closer }: MixedLightReasons["to_lead"], u?: TextUnits): string {
  const from = closer ? ` Lo consiguen a partir de ${distance(closer.distance_m, u)} del motivo.` : "";
  if (verdict === "enough") return "Sus focos los dan.";
  if (verdict === "closer") return `Sus focos dan menos.${from}`;
  if (verdict === "stronger")
    return "Solo lo consiguen focos más potentes, con su calor, su deslumbramiento y su peso.";
  return "Ningún foco que lleve un buceador da tanta luz: trabaje con la luz del día, acérquese o filme con el sol más bajo.";
}

/** Razones sobre la luz mixta. */
export const mixedLightReasons: Texts<MixedLightReasons, string> = {
  lamps_only: (p) =>
    `Sus focos de vídeo son la única luz: haga el balance de blancos a su luz. Aun así, el agua entre el foco, el motivo y la cámara cuesta ${stops(p.red)} de rojo, ${stops(p.green)} de verde y ${stops(p.blue)} de azul, así que una tarjeta a la distancia de trabajo es mejor que un valor Kelvin fijo.`,
  daylight_only: () => "No hay ningún foco de vídeo encendido: no hay luces que mezclar.",
  lights_fight: (p, u) =>
    `A ${depth(p.depth_m, u)}, con el balance de blancos hecho a la luz del día, todo lo que alcanzan los focos de vídeo muestra ${castOf(p.split)}, ${redder(p.red_excess)}. Ningún balance de blancos la elimina por sí solo.`,
  lamps_lead: (p, u) =>
    `A ${depth(p.depth_m, u)}, sus focos de vídeo superan a la luz del día en ${stops(p.green)} de verde. Haga el balance de blancos a su luz; la luz del día apenas tiñe el motivo.`,
  daylight_leads: (p, u) =>
    `A ${depth(p.depth_m, u)}, la luz del día supera a sus focos de vídeo en ${stops(-p.green)} de verde. Haga el balance de blancos a la luz del día; los focos de vídeo apenas se notan.`,
  mixing_zone: (p, u) =>
    `${capital(fromTo(p.from_m, p.to_m, u))}, los focos de vídeo y la luz del día se mezclan a la vista.`,
  lit_haze: (p) =>
    `El backscatter (las partículas que iluminan los focos) entre la cámara y el motivo tiene ${partOfBrightness(p.percent)} de un motivo gris (de ${brightness(p.low)} a ${brightness(p.high)}). Mantenga los focos de vídeo lejos del objetivo, oriéntelos hacia fuera, para que solo el borde del haz llegue al motivo, y acérquese.`,
  to_lead: (p, u) =>
    `A ${depth(p.depth_m, u)}, para superar a la luz del día en ${stops(p.stops)} sobre un motivo a ${distance(p.distance_m, u)} de los focos de vídeo hacen falta unos ${lumens(p.likely_lm)} en total (entre ${lumens(p.low_lm)} y ${lumens(p.high_lm)}). ${haveThem(p, u)}`,
  upright_subject: () =>
    "Los focos de vídeo y la luz del día se comparan sobre un motivo vertical, que recibe solo parte de la luz de arriba.",
};

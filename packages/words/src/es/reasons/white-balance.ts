import type { WhiteBalanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { castOf, depth, distance, howOften, kelvin, shown, stops, strength } from "../format.js";

/** Lo que dejaría en su lugar una tarjeta: con la cámara en su límite, lo mismo. */
const onCard = (p: { cast: number; card_cast: number }): string => {
  if (shown(p.cast, 1) === shown(p.card_cast, 1))
    return "Una tarjeta no ayudaría: el balance de blancos está en su límite";
  return p.card_cast < 1
    ? "Allí, una tarjeta la quitaría"
    : `Allí, con una tarjeta quedaría una dominante ${strength(p.card_cast)}`;
};

/** Razones sobre el balance de blancos. */
export const whiteBalanceReasons: Texts<WhiteBalanceReasons, string> = {
  kelvin_leaves_the_water: (p, u) =>
    `Ajustada a los ${kelvin(p.cct_K)} de los propios focos de vídeo, la cámara dejaría ${castOf(p.left)} por los ${distance(p.path_m, u)} de agua entre el foco, el motivo y la cámara. Una tarjeta a la distancia de trabajo la quita.`,
  balance_again: (p, u) =>
    `La luz cambia con la profundidad. Al bajar aparece ${howOften(p.times)} ${castOf(p.tolerance)}, por primera vez a ${depth(p.first_m, u)}: repita cada vez el balance de blancos.`,
  one_balance_serves: () =>
    "Un solo balance de blancos sirve para todo el recorrido: uno nuevo aportaría poco.",
  kelvin_balance_leaves: (p, u) =>
    `Ajustada a ${kelvin(p.cct_K)}, la cámara deja en el gris ${castOf(p.cast)} a ${depth(p.depth_m, u)}. ${onCard(p)}.`,
  auto_balance_leaves: (p, u) =>
    `El balance de blancos automático hace que la imagen entera salga gris de media, con el agua incluida, hasta donde llega. A ${depth(p.depth_m, u)} eso deja en el gris ${castOf(p.cast)}. ${onCard(p)}.`,
  balance_in_reach: () =>
    "El balance de blancos de la cámara logra dejar neutra una tarjeta en todo el recorrido.",
  balance_falls_short: (p, u) =>
    `A ${depth(p.depth_m, u)}, el balance de blancos de la cámara no llega a igualar los canales: se queda corto en ${stops(p.short_stops)}. Eso deja en el gris ${castOf(p.cast)}: corríjala en la edición.`,
};

import type { BalanceOnStandIn, CardNotes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { castOf, percent, spoken } from "./format.js";

const STAND_INS: Readonly<Record<BalanceOnStandIn["stand_in"], string>> = {
  white_slate: "una pizarra blanca",
  pale_sand: "la arena clara",
  grey_glove: "un guante gris liso",
  hand: "su mano sin guante",
};

/** Lo que conviene saber de la tarjeta para el balance de blancos. */
export const cardNotes: Texts<CardNotes, string> = {
  without_card: (p) =>
    `Sin tarjeta, use lo primero que tenga de esta lista: ${spoken(p.ranked.map(({ stand_in, cast }) => `${STAND_INS[stand_in]} deja ${castOf(cast)}`))}.`,
  card_level: (p) =>
    `Exponga de modo que una tarjeta blanca quede hacia el ${percent(p.white_percent)} en el histograma o en las cebras, y una gris hacia el ${percent(p.grey_percent)}: una tarjeta blanca quemada da un balance erróneo.`,
  card_level_by_maker: () =>
    "En una grabación log, la tabla del fabricante dice a qué porcentaje queda una tarjeta blanca; no deje que se queme, o el balance saldrá mal.",
  balance_in_edit: () =>
    "Después de cada balance, filme la tarjeta durante unos segundos: en la edición, tome de esa toma el punto blanco y cópielo a todos los planos de esa profundidad.",
};

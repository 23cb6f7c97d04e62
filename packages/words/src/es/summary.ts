import type { SummaryCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { choiceOf, filterName } from "./filter-name.js";
import { depth, fromTo, howOften, kelvin, stops } from "./format.js";
import { lampSummary } from "./lamp-summary.js";

/** El plan en unas pocas frases. */
export const summary: Texts<SummaryCodes, string> = {
  ...lampSummary,
  no_filter: () => "No monte ningún filtro de color.",
  mount: (p) => `Monte ${filterName(p.filter)}.`,
  carry: (p, u) => `Lleve ${filterName(p.filter)} y úselo ${fromTo(p.from_m, p.to_m, u)}.`,
  too_dark: (p, u) => `A ${depth(p.depth_m, u)} hay ${stops(p.shortfall_stops)} de luz de menos.`,
  expose: ({ from, to }, u) =>
    to === undefined || setting(to) === setting(from)
      ? `Exponga con ${setting(from)}.`
      : `A ${depth(from.depth_m, u)} exponga con ${setting(from)}; a ${depth(to.depth_m, u)}, con ${setting(to)}.`,
  balance: (p) =>
    `Haga el balance de blancos con la tarjeta al empezar${p.again > 0 ? ` y ${howOften(p.again)} más al bajar` : ""}.`,
  expose_by_itself: () => "Deje la exposición a la cámara.",
  balance_by_itself: () => "Deje el balance de blancos en automático.",
  balance_in_kelvin: (p) => `Ponga el balance de blancos en ${kelvin(p.cct_K)}.`,
  close_filter: (p) => `Hay poca diferencia: ${choiceOf(p.filter)} daría casi el mismo resultado.`,
};

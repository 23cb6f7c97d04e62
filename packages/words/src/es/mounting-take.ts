import type { MountTakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { shown, spoken, unit } from "./format.js";
import { mountingHolders } from "./mounting-holders.js";

/** Lo que sujeta los filtros de un plan. */
export const mountingTake: Texts<MountTakeCodes, TakeText> = {
  holder: (p) => ({ what: mountingHolders[p.holder], why: "Sujeta el filtro." }),
  rings: (p) => ({
    what: `${p.rings.length === 1 ? "el anillo adaptador" : "los anillos adaptadores"} ${spoken(p.rings)}`,
    why: `${p.rings.length === 1 ? "Lleva" : "Llevan"} de la rosca del objetivo o del puerto a la del filtro.`,
  }),
  ring_lacking: (p) => ({
    what: `un anillo adaptador de ${shown(p.from_mm)} a ${unit(shown(p.to_mm), "mm")}`,
    why: "Con sus anillos no se llega al filtro.",
  }),
};

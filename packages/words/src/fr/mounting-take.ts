import type { MountTakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { plural, shown, spoken, unit } from "./format.js";
import { mountingHolders } from "./mounting-holders.js";

/** Ce qui tient les filtres d’un plan. */
export const mountingTake: Texts<MountTakeCodes, TakeText> = {
  holder: (p) => ({ what: mountingHolders[p.holder], why: "Pour tenir le filtre." }),
  rings: (p) => ({
    what: `${plural(p.rings.length, { one: "la bague", other: "les bagues" })} d’adaptation ${spoken(p.rings)}`,
    why: "Du filetage de l’objectif ou du hublot à celui du filtre.",
  }),
  ring_lacking: (p) => ({
    what: `une bague d’adaptation de ${shown(p.from_mm)} à ${unit(shown(p.to_mm), "mm")}`,
    why: "Vos bagues ne mènent pas au filtre.",
  }),
};

import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName, kindName } from "./filter-name.js";
import { densityOf, neutral } from "./format.js";

/** Was mitkommt, und wozu. */
export const take: Texts<TakeCodes, TakeText> = {
  lens_filter: (p) => ({ what: filterName(p.filter, "wen"), why: "Nach Plan kommt er aufs Objektiv." }),
  neutral_density: (p) => ({ what: neutral(p.density), why: "Ohne ihn ist es zu hell." }),
  lamp_filters: (p) => ({
    what: `${filterName(p.filter, "wen")} für jede Videolampe`,
    why: "Damit passen sie in der Tiefe zum Tageslicht.",
  }),
  lamp_filters_lacking: (p) => ({
    what: `einen ${kindName(p.kind)} der Dichte ${densityOf(p.density)} für jede Videolampe`,
    why: "In deiner Ausrüstung passt keiner. Damit könntest du die Videolampen anlassen.",
  }),
  lamp: () => ({
    what: "die Videolampen",
    why: "Der Plan braucht sie, oder sie bleiben ausgeschaltet am Rig.",
  }),
  card: () => ({
    what: "eine Grau- oder Weißkarte",
    why: "Du brauchst sie für jeden Weißabgleich: Häng sie so ein, dass du sie mit einer Hand erreichst.",
  }),
  spares: () => ({
    what: "volle Akkus, eine leere Speicherkarte, Ersatz-O-Ringe und Trockenmittel",
    why: "Ein leerer Akku, eine volle Karte, ein Leck oder ein beschlagener Port beendet das Filmen.",
  }),
};

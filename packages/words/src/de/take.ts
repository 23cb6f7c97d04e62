import type { TakeCodes } from "@sunfathom/planner";
import type { TakeText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { filterName, kindName } from "./filter-name.js";
import { distance, neutral, shown } from "./format.js";

/** Was mitkommt, und wozu. */
export const take: Texts<TakeCodes, TakeText> = {
  lens_filter: (p) => ({ what: filterName(p.filter, "wen"), why: "Nach Plan kommt er aufs Objektiv." }),
  neutral_density: (p) => ({ what: neutral(p.density), why: "Ohne ihn ist es zu hell." }),
  lamp_filters: (p) => ({
    what: `${filterName(p.filter, "wen")} für jede Videolampe`,
    why: "Damit passen sie in der Tiefe zum Tageslicht.",
  }),
  lamp_filters_lacking: (p) => ({
    what: `einen ${kindName(p.kind)} der Dichte ${shown(p.density, 1)} für jede Videolampe`,
    why: "In deiner Ausrüstung passt keiner. Damit könntest du die Videolampen anlassen.",
  }),
  filter_mount: (p) => ({
    what: { flip: "den Klapphalter", clip_on: "den Clip-Halter" }[p.mount],
    why: "Er hält den Filter vor dem Port.",
  }),
  lamp: (p, u) => ({
    what: p.check ? "die Videolampen, geladen und geprüft" : "die Videolampen",
    why: p.check
      ? `Der Plan rechnet mit ihrem vollen Licht aus ${distance(p.check.distance_m, u)} Abstand.`
      : "Bei diesem Tauchgang bleiben sie aus.",
  }),
  dive_light: () => ({
    what: "eine Tauchlampe",
    why: "Bei ihrem Licht tauchst du.",
  }),
  card: () => ({
    what: "eine Grau- oder Weißkarte oder eine weiße Schreibtafel",
    why: "Du brauchst sie für jeden Weißabgleich: Häng sie so ein, dass du sie mit einer Hand erreichst.",
  }),
  spares: () => ({
    what: "volle Akkus, eine leere Speicherkarte, Ersatz-O-Ringe und Trockenmittel",
    why: "Ein leerer Akku, eine volle Karte, ein Leck oder ein beschlagener Port beendet das Filmen.",
  }),
};

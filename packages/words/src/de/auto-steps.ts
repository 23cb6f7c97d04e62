import type { AutoStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { dialShutter } from "./dial.js";
import { aCast, kelvin, stops } from "./format.js";

/** Was der Kamera überlassen bleibt, und warum. */
export const autoSteps: Texts<AutoStepCodes, StepText> = {
  set_modes: (p) => ({
    text: `Stell die Belichtung auf ${p.exposure_mode === "auto" ? "Automatik" : `manuell mit ${dialShutter(p.exposure.shutter_s)} Belichtungszeit`} und den Weißabgleich auf ${{ auto: "Automatik", kelvin: "einen festen Kelvinwert", card: "manuell, auf eine Karte" }[p.white_balance_mode]}.`,
    why: "Automatiken richten sich nach dem, was im Bild ist: Sieh ab und zu nach.",
  }),
  exposure_by_itself: (p) => ({
    text:
      Math.abs(p.stops) < 1 / 3
        ? "Lass die Kamera belichten, und prüf, ob helle Stellen ausfressen."
        : `Stell die Belichtungskorrektur auf ${p.stops > 0 ? "+" : "-"}${stops(Math.abs(p.stops))} fürs Motiv, und prüf, ob helle Stellen ausfressen.`,
    why: "Die Kamera misst das ganze Bild, samt Wasser.",
  }),
  balance_by_itself: (p) => ({
    text: "Sieh dir die Farben eines ersten Bildes an: Den Weißabgleich macht die Kamera selbst.",
    why: `Auf Grau bleibt damit ${aCast(p.cast)}.`,
  }),
  balance_in_kelvin: (p) => ({
    text: `Stell den Weißabgleich auf ${kelvin(p.cct_K)} und lass ihn dort.`,
    why: `Kein fester Kelvinwert kennt das Wasser: Auf Grau bleibt ${aCast(p.cast)}.`,
  }),
};

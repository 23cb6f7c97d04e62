import type { AutoStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { dialShutter } from "./dial.js";
import { castOf, kelvin, stops } from "./format.js";

/** Ce qui est laissé à l’appareil, et pourquoi. */
export const autoSteps: Texts<AutoStepCodes, StepText> = {
  set_modes: (p) => ({
    text: `Réglez l’exposition ${p.exposure_mode === "auto" ? "en automatique" : `en manuel, avec un temps de pose de ${dialShutter(p.exposure.shutter_s)}`}, et la balance des blancs ${{ auto: "en automatique", kelvin: "sur une valeur en kelvins", card: "en manuel, sur une charte" }[p.white_balance_mode]}.`,
    why: "Les automatismes dérivent avec ce qu’il y a dans l’image : contrôlez de temps en temps.",
  }),
  exposure_by_itself: (p) => ({
    text:
      Math.abs(p.stops) < 1 / 3
        ? "Laissez l’appareil exposer, et surveillez les hautes lumières."
        : `Réglez la correction d’exposition sur ${p.stops > 0 ? "+" : "−"}${stops(Math.abs(p.stops))} pour le sujet, et surveillez les hautes lumières.`,
    why: "L’appareil mesure toute l’image, eau comprise.",
  }),
  balance_by_itself: (p) => ({
    text: "Regardez les couleurs d’une première image : l’appareil fait seul la balance des blancs.",
    why: `Il reste ainsi ${castOf(p.cast)} sur le gris.`,
  }),
  balance_in_kelvin: (p) => ({
    text: `Réglez la balance des blancs sur ${kelvin(p.cct_K)}, et n’y touchez plus.`,
    why: `Aucun réglage en kelvins ne connaît l’eau : il reste ${castOf(p.cast)} sur un gris.`,
  }),
};

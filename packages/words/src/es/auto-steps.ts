import type { AutoStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { dialShutter } from "./dial.js";
import { castOf, kelvin, stops } from "./format.js";

/** Qué se deja a la cámara, y por qué. */
export const autoSteps: Texts<AutoStepCodes, StepText> = {
  set_modes: (p) => ({
    text: `Ponga la exposición en ${p.exposure_mode === "auto" ? "automático" : `manual, con un tiempo de exposición de ${dialShutter(p.exposure.shutter_s)}`}, y el balance de blancos en ${{ auto: "automático", kelvin: "un valor Kelvin fijo", card: "personalizado, con tarjeta" }[p.white_balance_mode]}.`,
    why: "Los automatismos cambian con lo que hay en la imagen: compruébelos de vez en cuando.",
  }),
  exposure_by_itself: (p) => ({
    text:
      Math.abs(p.stops) < 1 / 3
        ? "Deje que la cámara exponga y vigile las altas luces."
        : `Ponga la compensación de exposición en ${p.stops > 0 ? "+" : "-"}${stops(Math.abs(p.stops))} para el motivo y vigile las altas luces.`,
    why: "La cámara mide la imagen entera, con el agua incluida.",
  }),
  balance_by_itself: (p) => ({
    text: "Revise los colores de una primera toma: la cámara hace sola el balance de blancos.",
    why: `Así queda ${castOf(p.cast)} en el gris.`,
  }),
  balance_in_kelvin: (p) => ({
    text: `Ponga el balance de blancos en ${kelvin(p.cct_K)} y no lo toque más.`,
    why: `Ningún valor Kelvin fijo conoce el agua: en el gris queda ${castOf(p.cast)}.`,
  }),
};

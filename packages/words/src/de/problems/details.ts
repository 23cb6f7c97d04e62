import type { FieldError } from "@sunfathom/contract";
import { fieldText } from "../../problems/texts.js";

/** Ein Name, der in einem JSON-Objekt zweimal steht. */
export const repeatedName = fieldText("Der Name steht zweimal in seinem Objekt.", "jeder Name einmal");

/** Sätze für `detail`. */
export const problemDetails = {
  /** Von allem, was an einem Body falsch ist, das Erste. */
  invalid: ({ errors, more }: { errors: readonly FieldError[]; more: boolean }): string => {
    const [first] = errors;
    const where = first === undefined || first.pointer === "" ? "" : `${first.pointer}: `;
    const others =
      errors.length === 1
        ? ""
        : ` Und ${errors.length - 1} ${errors.length === 2 ? "weiterer" : "weitere"} Fehler.`;
    const unlisted = ` Mehr als ${errors.length} Werte sind falsch: Nur die ersten ${errors.length} sind aufgeführt.`;
    return `${where}${first?.message}${more ? unlisted : others}`;
  },
  otherModel: ({ expected, is }: { expected: string; is: string }): string =>
    `Die Anfrage erwartet Version ${expected} des Modells; hier läuft ${is}.`,
};

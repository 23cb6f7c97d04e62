import type { FieldError } from "@sunfathom/contract";
import { fieldText } from "../../problems/texts.js";

/** Un nombre que aparece dos veces en un objeto JSON. */
export const repeatedName = fieldText("El nombre aparece dos veces en su objeto.", "cada nombre una vez");

/** Frases para `detail`. */
export const problemDetails = {
  /** De todo lo que está mal en un cuerpo, lo primero. */
  invalid: ({ errors, more }: { errors: readonly FieldError[]; more: boolean }): string => {
    const [first] = errors;
    const where = first === undefined || first.pointer === "" ? "" : `${first.pointer}: `;
    const others = errors.length === 1 ? "" : ` Y ${errors.length - 1} más.`;
    const unlisted = ` Hay más de ${errors.length} valores incorrectos: solo se enumeran los ${errors.length} primeros.`;
    return `${where}${first?.message}${more ? unlisted : others}`;
  },
  otherModel: ({ expected, is }: { expected: string; is: string }): string =>
    `La petición espera la versión ${expected} del modelo; este servicio usa la ${is}.`,
};

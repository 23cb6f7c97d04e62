import type { FieldError } from "@sunfathom/contract";
import { fieldText } from "../../problems/texts.js";

/** Un nom qui figure deux fois dans un objet JSON. */
export const repeatedName = fieldText("Le nom figure deux fois dans son objet.", "chaque nom une seule fois");

/** Phrases pour le `detail` des problèmes. */
export const problemDetails = {
  /** De tout ce qui ne va pas dans un corps, la première chose. */
  invalid: ({ errors, more }: { errors: readonly FieldError[]; more: boolean }): string => {
    const [first] = errors;
    const where = first === undefined || first.pointer === "" ? "" : `${first.pointer} : `;
    const count = errors.length - 1;
    const others = count === 0 ? "" : ` Et ${count} ${count === 1 ? "autre erreur" : "autres erreurs"}.`;
    const unlisted = ` Plus de ${errors.length} valeurs sont fausses : seules les ${errors.length} premières sont citées.`;
    return `${where}${first?.message}${more ? unlisted : others}`;
  },
  otherModel: ({ expected, is }: { expected: string; is: string }): string =>
    `La requête attend la version ${expected} du modèle ; ce service utilise la ${is}.`,
};

import type { CheckParameters, NumberRange, WantedType } from "@sunfathom/contract";
import type { CheckText } from "../../problem-texts.js";
import type { Texts } from "../../problems/texts.js";
import { asGiven } from "../format.js";

/** Ce qui ne va pas dans une valeur que son schéma refuse. Ce qui est à envoyer y est écrit comme en JSON. */
export const checkTexts: Texts<CheckParameters, CheckText> = {
  unknown_field: (p) => ({
    message: `Le champ ${p.name} n’existe pas.`,
    ...("field" in p
      ? { allowed: `${p.value} ${p.from_unit}, soit ${p.converted} ${p.to_unit} : envoyez ${p.field}` }
      : {}),
  }),
  missing_field: ({ name, needed }) => ({
    message: `Il manque ${name}.`,
    allowed: `il faut : ${needed.join(", ")}`,
  }),
  wrong_type: ({ found, wanted }) => ({
    message:
      found === "null" ? "null n’est pas une valeur : omettez le champ." : `C’est ${foundTypes[found]}.`,
    allowed: wantedText(wanted),
  }),
  out_of_range: (p) => ({
    message: `${asGiven(p.value)}${unitOf(p)}, c’est trop ${p.value < p.minimum ? "bas" : "haut"}.`,
    allowed: rangeOf(p),
  }),
  not_whole: (p) => ({ message: `${asGiven(p.value)} n’est pas un nombre entier.`, allowed: rangeOf(p) }),
  not_an_option: ({ options }) => ({
    message: "Ce n’est pas un nom que le champ accepte.",
    allowed: oneOf(options),
  }),
  wrong_length: ({ of, length, min_length, max_length }) => ({
    message:
      of === "text"
        ? `Le texte a ${length} caractères.`
        : `La liste a ${length} ${length === 1 ? "élément" : "éléments"}.`,
    allowed: `${min_length} ${max_length === undefined ? "ou plus" : `à ${max_length}`}${of === "text" ? " caractères" : ""}`,
  }),
  wrong_form: ({ example }) => ({
    message: "Le texte n’a pas la forme que le champ accepte.",
    allowed: `par exemple ${example}`,
  }),
};

const foundTypes = {
  list: "une liste",
  object: "un objet",
  number: "un nombre",
  not_a_finite_number: "autre chose qu’un nombre fini",
  text: "un texte",
  boolean: "vrai ou faux (true ou false)",
  no_json: "une valeur que JSON ne sait pas contenir",
};

const oneOf = (options: readonly string[]): string => `un de ceux-ci : ${options.join(", ")}`;

function wantedText(wanted: WantedType): string {
  switch (wanted.type) {
    case "number":
      return `un nombre, ${spanOf(wanted)}`;
    case "option":
      return oneOf(wanted.options);
    default:
      return foundTypes[wanted.type];
  }
}

const unitOf = ({ unit }: NumberRange): string => (unit === undefined ? "" : ` ${unit}`);
const spanOf = (range: NumberRange): string =>
  `de ${asGiven(range.minimum)} à ${asGiven(range.maximum)}${unitOf(range)}`;
const rangeOf = (range: NumberRange): string => `${range.whole ? "un nombre entier, " : ""}${spanOf(range)}`;

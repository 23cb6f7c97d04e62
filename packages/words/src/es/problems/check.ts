import type { CheckParameters, NumberRange, WantedType } from "@sunfathom/contract";
import type { CheckText } from "../../problem-texts.js";
import type { Texts } from "../../problems/texts.js";
import { asGiven } from "../format.js";

/** Qué le pasa a un valor que su esquema rechaza. Lo que hay que enviar va como en JSON. */
export const checkTexts: Texts<CheckParameters, CheckText> = {
  unknown_field: (p) => ({
    message: `No existe el campo ${p.name}.`,
    ...("field" in p
      ? { allowed: `${p.value} ${p.from_unit} son ${p.converted} ${p.to_unit}: envíe ${p.field}` }
      : {}),
  }),
  missing_field: ({ name, needed }) => ({
    message: `Falta ${name}.`,
    allowed: `se necesita: ${needed.join(", ")}`,
  }),
  wrong_type: ({ found, wanted }) => ({
    message: found === "null" ? "null no es un valor: omita el campo." : `Esto es ${foundTypes[found]}.`,
    allowed: wantedText(wanted),
  }),
  out_of_range: (p) => ({
    message: `${asGiven(p.value)}${unitOf(p)} es ${p.value < p.minimum ? "demasiado bajo" : "demasiado alto"}.`,
    allowed: rangeOf(p),
  }),
  not_whole: (p) => ({ message: `${asGiven(p.value)} no es un número entero.`, allowed: rangeOf(p) }),
  not_an_option: ({ options }) => ({
    message: "El campo no admite este nombre.",
    allowed: oneOf(options),
  }),
  wrong_length: ({ of, length, min_length, max_length }) => ({
    message:
      of === "text"
        ? `El texto tiene ${length} caracteres.`
        : `La lista tiene ${length} ${length === 1 ? "elemento" : "elementos"}.`,
    allowed: `${max_length === undefined ? `${min_length} o más` : `de ${min_length} a ${max_length}`}${of === "text" ? " caracteres" : ""}`,
  }),
  wrong_form: ({ example }) => ({
    message: "El texto no tiene la forma que admite el campo.",
    allowed: `por ejemplo ${example}`,
  }),
};

const foundTypes = {
  list: "una lista",
  object: "un objeto",
  number: "un número",
  not_a_finite_number: "un número no finito",
  text: "texto",
  boolean: "un valor booleano (true o false)",
  no_json: "un valor que JSON no puede contener",
};

const oneOf = (options: readonly string[]): string => `uno de: ${options.join(", ")}`;

function wantedText(wanted: WantedType): string {
  switch (wanted.type) {
    case "number":
      return `un número, ${spanOf(wanted)}`;
    case "option":
      return oneOf(wanted.options);
    default:
      return foundTypes[wanted.type];
  }
}

const unitOf = ({ unit }: NumberRange): string => (unit === undefined ? "" : ` ${unit}`);
const spanOf = (range: NumberRange): string =>
  `de ${asGiven(range.minimum)} a ${asGiven(range.maximum)}${unitOf(range)}`;
const rangeOf = (range: NumberRange): string => `${range.whole ? "un número entero, " : ""}${spanOf(range)}`;

import type { CheckParameters, NumberRange, WantedType } from "@sunfathom/contract";
import type { CheckText } from "../../problem-texts.js";
import type { Texts } from "../../problems/texts.js";
import { asGiven } from "../format.js";

/** Was an einem Wert falsch ist, den sein Schema ablehnt. Was zu schicken ist, steht da wie in JSON. */
export const checkTexts: Texts<CheckParameters, CheckText> = {
  unknown_field: (p) => ({
    message: `Das Feld ${p.name} gibt es nicht.`,
    ...("field" in p
      ? { allowed: `${p.value} ${p.from_unit} sind ${p.converted} ${p.to_unit}: Schick ${p.field}` }
      : {}),
  }),
  missing_field: ({ name, needed }) => ({
    message: `${name} fehlt.`,
    allowed: `nötig: ${needed.join(", ")}`,
  }),
  wrong_type: ({ found, wanted }) => ({
    message: found === "null" ? "null ist kein Wert: Lass das Feld weg." : `Das ist ${foundTypes[found]}.`,
    allowed: wantedText(wanted),
  }),
  out_of_range: (p) => ({
    message: `${asGiven(p.value)}${unitOf(p)} ist ${p.value < p.minimum ? "zu wenig" : "zu viel"}.`,
    allowed: rangeOf(p),
  }),
  not_whole: (p) => ({ message: `${asGiven(p.value)} ist keine ganze Zahl.`, allowed: rangeOf(p) }),
  not_an_option: ({ options }) => ({
    message: "Das ist keiner der Namen, die das Feld annimmt.",
    allowed: oneOf(options),
  }),
  wrong_length: ({ of, length, min_length, max_length }) => ({
    message:
      of === "text"
        ? `Der Text hat ${length} Zeichen.`
        : `Die Liste hat ${length} ${length === 1 ? "Eintrag" : "Einträge"}.`,
    allowed: `${min_length} ${max_length === undefined ? "oder mehr" : `bis ${max_length}`}${of === "text" ? " Zeichen" : ""}`,
  }),
  wrong_form: ({ example }) => ({
    message: "Der Text hat nicht die Form, die das Feld annimmt.",
    allowed: `zum Beispiel ${example}`,
  }),
};

const foundTypes = {
  list: "eine Liste",
  object: "ein Objekt",
  number: "eine Zahl",
  not_a_finite_number: "keine endliche Zahl",
  text: "Text",
  boolean: "wahr oder falsch (true oder false)",
  no_json: "nichts, was JSON enthalten kann",
};

const oneOf = (options: readonly string[]): string => `einer von: ${options.join(", ")}`;

function wantedText(wanted: WantedType): string {
  switch (wanted.type) {
    case "number":
      return `eine Zahl, ${spanOf(wanted)}`;
    case "option":
      return oneOf(wanted.options);
    default:
      return foundTypes[wanted.type];
  }
}

const unitOf = ({ unit }: NumberRange): string => (unit === undefined ? "" : ` ${unit}`);
const spanOf = (range: NumberRange): string =>
  `${asGiven(range.minimum)} bis ${asGiven(range.maximum)}${unitOf(range)}`;
const rangeOf = (range: NumberRange): string => `${range.whole ? "eine ganze Zahl, " : ""}${spanOf(range)}`;

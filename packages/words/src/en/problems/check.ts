import type { CheckParameters, NumberRange, WantedType } from "@sunfathom/contract";
import type { FieldText, Texts } from "../../problems/texts.js";

/** What is wrong with a value that its schema refuses. Where `allowed` is missing, it is names alone, and they need no words. */
export const checkTexts: Texts<CheckParameters, Pick<FieldText, "message"> & Partial<FieldText>> = {
  unknown_field: (p) => ({
    message: `There is no field ${p.name}.`,
    ...("field" in p
      ? { allowed: `${p.value} ${p.from_unit} is ${p.converted} ${p.to_unit}: send ${p.field}` }
      : {}),
  }),
  missing_field: ({ name, needed }) => ({
    message: `${name} is missing.`,
    allowed: `needed: ${needed.join(", ")}`,
  }),
  wrong_type: ({ found, wanted }) => ({
    message: found === "null" ? "null is not a value: leave the field out." : `This is ${foundTypes[found]}.`,
    allowed: wantedText(wanted),
  }),
  out_of_range: (p) => ({
    message: `${p.value}${unitOf(p)} is ${p.value < p.minimum ? "too low" : "too high"}.`,
    allowed: rangeOf(p),
  }),
  not_whole: (p) => ({ message: `${p.value} is not whole.`, allowed: rangeOf(p) }),
  not_an_option: ({ options }) => ({
    message: "The field does not take this name.",
    allowed: oneOf(options),
  }),
  wrong_length: ({ of, length, min_length, max_length }) => ({
    message:
      of === "text"
        ? `The text has ${length} characters.`
        : `The list has ${length} ${length === 1 ? "entry" : "entries"}.`,
    allowed: `${min_length} ${max_length === undefined ? "or more" : `to ${max_length}`}${of === "text" ? " characters" : ""}`,
  }),
  wrong_form: ({ example }) => ({
    message: "The text does not have the form that the field takes.",
    allowed: `for example ${example}`,
  }),
};

const foundTypes = {
  list: "a list",
  object: "an object",
  number: "a number",
  not_a_finite_number: "not a finite number",
  text: "text",
  boolean: "true or false",
  no_json: "a value that JSON cannot hold",
};

const oneOf = (options: readonly string[]): string => `one of: ${options.join(", ")}`;

function wantedText(wanted: WantedType): string {
  switch (wanted.type) {
    case "number":
      return `a number, ${spanOf(wanted)}`;
    case "option":
      return oneOf(wanted.options);
    default:
      return foundTypes[wanted.type];
  }
}

const unitOf = ({ unit }: NumberRange): string => (unit === undefined ? "" : ` ${unit}`);
const spanOf = (range: NumberRange): string => `${range.minimum} to ${range.maximum}${unitOf(range)}`;
const rangeOf = (range: NumberRange): string => `${range.whole ? "a whole number, " : ""}${spanOf(range)}`;

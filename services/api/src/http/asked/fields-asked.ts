import { brief, type Operation, pick, selectionOf } from "@sunfathom/answers";
import type { FieldError } from "@sunfathom/contract";
import type { FieldsErrors, FieldText, ProblemTexts } from "@sunfathom/words";
import { decoded } from "./decoded.js";

/** The parameter that asks for some fields of an answer, and the word in it that asks for the answer in brief. */
export const fieldsParameter = "fields";
const inBrief = "brief";

/** Fields that every answer has, whatever is asked for. */
const always = ["cautions"];
/** A name and its path in an answer are far shorter, and an answer has fewer fields. */
const longest = 4000;

/** Some of an answer. */
export interface Part {
  /** Tells it from other parts. */
  key: string;
  /** Makes it of the bytes of the whole answer. */
  of: (bytes: Uint8Array) => Buffer;
}

interface FieldsAsked {
  /** The query without the parameter. */
  query: string;
  /** Undefined where the whole answer is asked for. */
  part: Part | undefined;
  errors: FieldError[];
}

/** Reads which fields of an answer a query asks for. @param texts for what is wrong with them */
export type FieldsReader = (query: string, texts: ProblemTexts["fields"]) => FieldsAsked;

/** Reads which fields of a calculation's answer a query asks for. */
export function fieldsReader({ form: { form }, brief: briefly, name }: Operation): FieldsReader {
  const whole = selectionOf(briefly, form, []);
  if ("unknown" in whole) throw new Error(`${name} comes down to fields that its answer does not have.`);

  return (query, texts) => {
    if (!query.includes(fieldsParameter)) return { query, part: undefined, errors: [] };
    const pairs = query.split("&");
    const own = pairs.filter((pair) => nameOf(pair) === fieldsParameter);
    const rest = pairs.filter((pair) => nameOf(pair) !== fieldsParameter).join("&");
    const [only] = own;
    if (only === undefined) return { query, part: undefined, errors: [] };
    const text = own.length === 1 ? decoded(only.slice(fieldsParameter.length + 1)) : undefined;
    if (own.length > 1) return refused(rest, "repeated_parameter", texts.repeated_parameter({}));
    if (text === undefined) return refused(rest, "malformed_escape", texts.malformed_escape({}));
    if (text === "") return refused(rest, "empty_value", texts.empty_value({}));
    if (text.length > longest) {
      const lengths = { length: text.length, max_length: longest };
      return refused(rest, "wrong_length", texts.wrong_length(lengths));
    }
    if (text === inBrief)
      return { query: rest, part: partOf(inBrief, (answer) => brief(answer, whole.selection)), errors: [] };
    const names = [...new Set(text.split(","))].sort();
    const found = selectionOf(names, form, always);
    if ("unknown" in found)
      return {
        query: rest,
        part: undefined,
        errors: found.unknown.map((unknown) => unknownField(unknown, texts)),
      };
    return { query: rest, part: partOf(names.join(), (answer) => pick(answer, found.selection)), errors: [] };
  };
}

type Whole = Parameters<typeof brief>[0];

function partOf(key: string, from: (answer: Whole) => unknown): Part {
  const text = (bytes: Uint8Array) =>
    Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString();
  return { key, of: (bytes) => Buffer.from(JSON.stringify(from(JSON.parse(text(bytes))))) };
}

function unknownField(
  { name, near }: { name: string; near: string | undefined },
  texts: ProblemTexts["fields"],
): FieldError {
  return {
    ...errorOf("unknown_field", texts.unknown_field({ name: name.slice(0, 100) })),
    ...(near === undefined ? {} : { did_you_mean: near }),
  };
}

const errorOf = (code: keyof FieldsErrors, text: FieldText): FieldError => ({
  pointer: `/${fieldsParameter}`,
  code,
  ...text,
});

const refused = (query: string, code: keyof FieldsErrors, text: FieldText): FieldsAsked => ({
  query,
  part: undefined,
  errors: [errorOf(code, text)],
});

const nameOf = (pair: string): string | undefined => decoded(pair.split("=", 1)[0] ?? "");

import type { JsonSchema } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { nearest } from "./nearest.js";
import { wrongType } from "./wrong-type.js";

export function string(schema: JsonSchema): Check {
  return schema.enum === undefined ? text(schema) : option(schema.enum);
}

function option(options: readonly string[]): Check {
  const known = new Set(options);
  const allowed = options.join(", ");
  return (value, pointer, findings) => {
    if (typeof value !== "string") {
      findings.add(() => wrongType(value, pointer, `one of: ${allowed}`));
    } else if (!known.has(value)) {
      findings.add(() => {
        const near = nearest(value, options);
        return {
          pointer,
          code: "not_an_option",
          message: "This is none of the names that the field takes.",
          allowed: `one of: ${allowed}`,
          ...(near === undefined ? {} : { did_you_mean: near }),
        };
      });
    }
  };
}

function text(schema: JsonSchema): Check {
  const { minLength = 0, maxLength = Number.POSITIVE_INFINITY, examples } = schema;
  const pattern = schema.pattern === undefined ? undefined : new RegExp(schema.pattern, "u");
  return (value, pointer, findings) => {
    if (typeof value !== "string") {
      findings.add(() => wrongType(value, pointer, "text"));
      return;
    }
    // Characters, as JSON Schema counts them, not halves of surrogate pairs.
    const length = charactersIn(value);
    if (length < minLength || length > maxLength) {
      findings.add(() => ({
        pointer,
        code: "wrong_length",
        message: `The text has ${length} characters.`,
        allowed: `${minLength} to ${maxLength} characters`,
      }));
    } else if (pattern?.test(value) === false) {
      findings.add(() => ({
        pointer,
        code: "wrong_form",
        message: "The text has not the form that the field takes.",
        allowed: `for example ${examples?.[0]}`,
      }));
    }
  };
}

/** In time that grows with the text, and without a copy of it. */
function charactersIn(value: string): number {
  let count = 0;
  for (const _ of value) count += 1;
  return count;
}

export const boolean: Check = (value, pointer, findings) => {
  if (typeof value !== "boolean") findings.add(() => wrongType(value, pointer, "true or false"));
};

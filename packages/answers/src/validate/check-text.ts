import type { JsonSchema } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { nearest } from "./nearest.js";
import { wrongType } from "./wrong-type.js";

export function string(schema: JsonSchema): Check {
  return schema.enum === undefined ? text(schema) : option(schema.enum);
}

function option(options: readonly string[]): Check {
  const known = new Set(options);
  return (value, pointer, findings) => {
    if (typeof value !== "string") {
      findings.add(() => wrongType(value, pointer, { type: "option", options }));
    } else if (!known.has(value)) {
      findings.add(() => {
        const near = nearest(value, options);
        return {
          pointer,
          code: "not_an_option",
          parameters: { options },
          ...(near === undefined ? {} : { did_you_mean: near }),
        };
      });
    }
  };
}

function text(schema: JsonSchema): Check {
  const { minLength = 0, maxLength = Number.POSITIVE_INFINITY, examples } = schema;
  const pattern = schema.pattern === undefined ? undefined : new RegExp(schema.pattern, "u");
  const limits = {
    min_length: minLength,
    ...(maxLength === Number.POSITIVE_INFINITY ? {} : { max_length: maxLength }),
  };
  return (value, pointer, findings) => {
    if (typeof value !== "string") {
      findings.add(() => wrongType(value, pointer, { type: "text" }));
      return;
    }
    // Characters, as JSON Schema counts them, not halves of surrogate pairs.
    const length = charactersIn(value);
    if (length < minLength || length > maxLength) {
      findings.add(() => ({
        pointer,
        code: "wrong_length",
        parameters: { of: "text", length, ...limits },
      }));
    } else if (pattern?.test(value) === false) {
      findings.add(() => ({
        pointer,
        code: "wrong_form",
        parameters: { example: String(examples?.[0]) },
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
  if (typeof value !== "boolean") findings.add(() => wrongType(value, pointer, { type: "boolean" }));
};

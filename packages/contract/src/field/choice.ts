import { z } from "zod/v3";
import { annotate } from "./annotation.js";

type Options = [string, ...string[]];

/** A field that takes one of the names in `options`, a component of its own. */
export function choice<T extends Options>(
  options: z.ZodEnum<T>,
  spec: { description: string; example: T[number]; default?: T[number] },
): z.ZodEnum<T> {
  return annotate(options.describe(withDefault(spec)), {
    ...(spec.default === undefined ? {} : { default: spec.default }),
    examples: [spec.example],
  });
}

function withDefault(spec: { description: string; default?: string | boolean }): string {
  return spec.default === undefined ? spec.description : `${spec.description} Default \`${spec.default}\`.`;
}

/** A yes or no. */
export function flag(spec: { description: string; example: boolean; default?: boolean }): z.ZodBoolean {
  return annotate(z.boolean().describe(withDefault(spec)), {
    ...(spec.default === undefined ? {} : { default: spec.default }),
    examples: [spec.example],
  });
}

/** Words for programs or people. */
export function text(spec: {
  description: string;
  example: string;
  maxLength?: number;
  /** 1 where there is a greatest length and nothing else is said. */
  minLength?: number;
  pattern?: RegExp;
}): z.ZodString {
  const string =
    spec.maxLength === undefined
      ? z.string()
      : z
          .string()
          .min(spec.minLength ?? 1)
          .max(spec.maxLength);
  const shaped = spec.pattern === undefined ? string : string.regex(spec.pattern);
  return annotate(shaped.describe(spec.description), { examples: [spec.example] });
}

/** A list of things of one kind. */
export function list<T extends z.ZodTypeAny>(
  item: T,
  spec: { description: string; example: readonly z.input<T>[]; minItems?: number; maxItems?: number },
): z.ZodArray<T> {
  const array = z.array(item).min(spec.minItems ?? 0);
  return annotate(
    (spec.maxItems === undefined ? array : array.max(spec.maxItems)).describe(spec.description),
    { examples: [spec.example] },
  );
}

import type { z } from "zod/v3";

/** What a component's JSON Schema says of a field beyond what zod can hold. */
export interface Annotation {
  /** Unit of a number, `1` where it has none. */
  unit?: string;
  /** Decimals to which an answer rounds a number. */
  decimals?: number;
  default?: unknown;
  examples?: readonly unknown[];
}

const annotations = new WeakMap<z.ZodTypeDef, Annotation>();

/**
 * Attaches `annotation` to `schema`. Call it last: every further method of zod makes another schema without it.
 * @returns the same schema
 */
export function annotate<T extends z.ZodTypeAny>(schema: T, annotation: Annotation): T {
  annotations.set(schema._def, annotation);
  return schema;
}

/** The annotation of the schema that `def` defines, if any. */
export function annotationOf(def: z.ZodTypeDef): Annotation | undefined {
  return annotations.get(def);
}

/** The same schema and annotation for a place where no default holds. */
export function withoutDefault<T extends z.ZodTypeAny>(schema: T): T {
  const { default: _, ...rest } = annotationOf(schema._def) ?? {};
  const { description } = schema;
  return annotate(description === undefined ? schema : schema.describe(description), rest);
}

import type { z } from "zod/v3";

type Fields = Record<string, z.ZodTypeAny>;
type SomeOptional<T extends Fields, N extends keyof T> = {
  [K in keyof T]: K extends N ? z.ZodOptional<T[K]> : T[K];
};

/** The same fields, of which those in `names` may be left out. */
export function withOptional<T extends Fields, N extends keyof T & string>(
  fields: T,
  names: readonly N[],
): SomeOptional<T, N> {
  const left: ReadonlySet<string> = new Set(names);
  const entries = Object.entries(fields).map(([name, schema]) => [
    name,
    left.has(name) ? schema.optional() : schema,
  ]);
  return Object.fromEntries(entries) as SomeOptional<T, N>;
}
type AllOptionalBut<T extends Fields, N extends string> = {
  [K in keyof T]: K extends N ? T[K] : z.ZodOptional<T[K]>;
};

/** The same fields, of which only those in `names` must be there. */
export function withOptionalBut<T extends Fields, N extends string>(
  fields: T,
  names: readonly N[],
): AllOptionalBut<T, N> {
  const needed: ReadonlySet<string> = new Set(names);
  const left = Object.keys(fields).filter((name) => !needed.has(name));
  return withOptional(fields, left) as unknown as AllOptionalBut<T, N>;
}

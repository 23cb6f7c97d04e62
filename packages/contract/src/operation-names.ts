// The one list of what can be computed, in the order in which it is described. All that goes by the name of an operation follows from
// it, by the compiler or written by .ci/write-operations.mjs: schemas, routes, description, client, offline parts.

/** Each has its schema in `result`, its plan in the planner and its descriptor in `answers`, in files of its name. */
export const calculationNames = [
  "attenuation",
  "filter-choice",
  "exposure-loss",
  "mixed-light",
  "white-balance",
  "colour-recovery",
  "dive-advice",
  "filter-mounting",
] as const;
export type CalculationName = (typeof calculationNames)[number];

/** Data that are the same for every caller. */
export const referenceNames = ["water-types", "filter-kinds", "models"] as const;
export type ReferenceName = (typeof referenceNames)[number];

/** `FilterChoice` for `filter-choice`. */
export type Pascal<Name extends string> = Name extends `${infer First}-${infer Rest}`
  ? `${Capitalize<First>}${Pascal<Rest>}`
  : Capitalize<Name>;

export function pascal<Name extends string>(name: Name): Pascal<Name> {
  const words = name.split("-").map((word) => word.charAt(0).toUpperCase() + word.slice(1));
  return words.join("") as Pascal<Name>;
}

export function pathOf(name: string): string {
  return `/v1/${name}`;
}

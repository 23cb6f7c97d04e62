import type { Selection } from "./selection.js";

/** What a selection leaves of a value, in the value's order. Selected fields that it does not have stay absent. */
export function pick(value: unknown, selection: Selection | true): unknown {
  if (selection === true || typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((item) => pick(item, selection));
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, inner]) => {
      const selected = Object.hasOwn(selection, name) ? selection[name] : undefined;
      return selected === undefined ? [] : [[name, pick(inner, selected)]];
    }),
  );
}

import { isObject, type Json } from "./json.js";

/** Entries that an example keeps of a list. */
const kept = 3;
/** A caution that is left out could hurt, and a question cannot be answered without its right option. */
const whole = new Set(["cautions", "options"]);

export interface Shortened {
  value: Json;
  /** of each list that was shortened its name, and how many entries it had, the most where there are several of the name */
  lists: Map<string, number>;
}

/** The same with lists cut to their first entries, and which they were. */
export function shorten(value: Json): Shortened {
  const lists = new Map<string, number>();
  const cut = (item: Json, name: string): Json => {
    if (Array.isArray(item)) {
      const long = item.length > kept && !whole.has(name);
      if (long) lists.set(name, Math.max(item.length, lists.get(name) ?? 0));
      return (long ? item.slice(0, kept) : item).map((entry) => cut(entry, name));
    }
    if (!isObject(item)) return item;
    return Object.fromEntries(Object.entries(item).map(([key, inner]) => [key, cut(inner, key)]));
  };
  return { value: cut(value, ""), lists };
}

/** Says what was shortened; nothing where nothing was. */
export function sayShortened(lists: ReadonlyMap<string, number>): string | undefined {
  if (lists.size === 0) return undefined;
  const names = [...lists].map(([name, length]) => `\`${name}\` (${length})`);
  return `From a real run. The first ${kept} entries of each list are shown; whole, they have up to: ${names.join(", ")}.`;
}

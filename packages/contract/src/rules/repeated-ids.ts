import type { Violation } from "./rule.js";

/**
 * Ids that an earlier thing of the same list has already.
 * @param pointer to the list
 */
export function repeatedIds(list: readonly { id: string }[], pointer: string): Violation[] {
  return list.flatMap(({ id }, index) => {
    const first = list.findIndex((other) => other.id === id);
    if (first === index) return [];
    const message = `${pointer}/${first} has the same id.`;
    return [{ pointer: `${pointer}/${index}/id`, message, allowed: "another id" }];
  });
}

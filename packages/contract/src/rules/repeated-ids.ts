import type { Violation } from "./rule.js";

/**
 * Ids that an earlier thing of the same list has already.
 * @param pointer to the list
 */
export function repeatedIds(list: readonly { id: string }[], pointer: string): Violation[] {
  const firsts = new Map<string, number>();
  return list.flatMap(({ id }, index) => {
    const first = firsts.get(id);
    if (first === undefined) {
      firsts.set(id, index);
      return [];
    }
    const message = `${pointer}/${first} has the same id.`;
    return [{ pointer: `${pointer}/${index}/id`, message, allowed: "another id" }];
  });
}

import { broken, type Violation } from "./rule.js";

/** An id that an earlier thing of the same list has already: where that stands, as a JSON pointer. */
export interface RepeatedId {
  first: string;
}

/**
 * Ids that an earlier thing of the same list has already.
 * @param pointer to the list
 */
export function repeatedIds(list: readonly { id: string }[], pointer: string): Violation<RepeatedId>[] {
  const firsts = new Map<string, number>();
  return list.flatMap(({ id }, index) => {
    const first = firsts.get(id);
    if (first === undefined) {
      firsts.set(id, index);
      return [];
    }
    return [broken(`${pointer}/${index}/id`, { first: `${pointer}/${first}` })];
  });
}

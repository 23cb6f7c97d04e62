/**
 * The text of an answer or problem: the same bytes on every path, since its fields already stand in the contract's
 * order and its numbers are rounded.
 */
export function toJson(body: object): string {
  return JSON.stringify(body);
}

/**
 * Where the questions of a paper were found, four bytes each: the template's place in the table, and round, turn and attempt.
 * With another order of the table other questions are made, and the digest refuses them.
 */
import type { Item, Origin } from "../item/item.js";
import { TEMPLATES } from "../templates/table.js";
import { fromBase64url, toBase64url } from "./base64url.js";

const BYTES = 4;

export function writeFound(items: readonly Pick<Item, "template" | "origin">[]): string {
  const bytes = items.flatMap(({ template, origin: { round, turn, attempt } }) => [
    TEMPLATES.findIndex(({ id }) => id === template),
    round,
    turn,
    attempt,
  ]);
  return toBase64url(Uint8Array.from(bytes));
}

/** Undefined for what `writeFound` did not write, or not with these templates. */
export function readFound(text: string): { template: string; origin: Origin }[] | undefined {
  const bytes = fromBase64url(text);
  if (bytes === undefined || bytes.length % BYTES !== 0) return undefined;
  const found: { template: string; origin: Origin }[] = [];
  for (let at = 0; at < bytes.length; at += BYTES) {
    const [place = 0, round = 0, turn = 0, attempt = 0] = bytes.slice(at, at + BYTES);
    const template = TEMPLATES[place]?.id;
    if (template === undefined) return undefined;
    found.push({ template, origin: { round, turn, attempt } });
  }
  return found;
}

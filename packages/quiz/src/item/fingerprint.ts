import { hash32 } from "../random/draw.js";
import type { Draft } from "./draft.js";
import type { Template } from "./template.js";

const SECOND_BASIS = 0x9dc5811c;
const hex = (value: number): string => value.toString(16).padStart(8, "0");

/** A name for what a question asks, whatever the paper, the order of its options or their wording: 64 bits, in hexadecimal. */
export function fingerprintOf({ id }: Pick<Template, "id">, { given }: Pick<Draft, "given">): string {
  const asked = `${id} ${JSON.stringify(given)}`;
  return hex(hash32(asked)) + hex(hash32(asked, SECOND_BASIS));
}

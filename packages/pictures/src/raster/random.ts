import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** FNV-1a, 32 bits, over UTF-16 code units. */
function hash32(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash;
}

/** Even numbers from 0 to below 1 that follow from a text: the same text, the same numbers. */
export function randomFrom(text: string): () => number {
  const generator = xoroshiro128plus(hash32(text));
  return () => (generator.next() >>> 0) / 2 ** 32;
}

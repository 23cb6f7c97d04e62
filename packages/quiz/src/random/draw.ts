/**
 * Seeded choice. The generator is sfc32 (Chris Doty-Humphrey's "small fast counter", of the PractRand test suite), fed by the
 * FNV-1a hash of the seed's text. Only 32-bit integer arithmetic: every engine draws the same.
 */

/** FNV-1a, 32 bits, over UTF-16 code units; `basis` gives independent hashes of one text. */
export function hash32(text: string, basis = 0x811c9dc5): number {
  let h = basis >>> 0;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return h >>> 0;
}

function sfc32(seed: string): () => number {
  let a = hash32(seed);
  let b = hash32(seed, a ^ 0x9e3779b9);
  let c = hash32(seed, b ^ 0x243f6a88);
  let counter = 1;
  const next = (): number => {
    const t = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + t;
    return t >>> 0;
  };
  // The first outputs still show the seed.
  for (let i = 0; i < 15; i++) next();
  return next;
}

export class Draw {
  readonly #next: () => number;

  constructor(seed: string) {
    this.#next = sfc32(seed);
  }

  /** A whole number from 0 to below `count`, all alike; `count` at least 1. */
  below(count: number): number {
    return Math.floor((this.#next() / 2 ** 32) * count);
  }

  /** One of a list that is not empty. */
  pick<T>(list: readonly T[]): T {
    const picked = list[this.below(list.length)];
    if (picked === undefined) throw new RangeError("Nothing to pick from.");
    return picked;
  }

  /** A shuffled copy (Fisher and Yates). */
  shuffle<T>(list: readonly T[]): T[] {
    const rest = [...list];
    const out: T[] = [];
    while (rest.length > 0) out.push(...rest.splice(this.below(rest.length), 1));
    return out;
  }

  /** `count` different ones of a list, in the list's order; all of a shorter list. */
  sample<T>(list: readonly T[], count: number): T[] {
    const chosen = new Set(this.shuffle(list.map((_, i) => i)).slice(0, count));
    return list.filter((_, i) => chosen.has(i));
  }
}

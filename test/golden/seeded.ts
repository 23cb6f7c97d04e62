/** A seeded stream of choices: mulberry32 (Tommy Ettinger, public domain, from memory). The same seed chooses the same on every machine. */
export class Seeded {
  #state: number;

  constructor(seed: number) {
    this.#state = seed;
  }

  /** From 0 to below 1. */
  share(): number {
    this.#state = (this.#state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  }

  chance(share: number): boolean {
    return this.share() < share;
  }

  /** As people write numbers: three digits. */
  between(low: number, high: number): number {
    return Number((low + (high - low) * this.share()).toPrecision(3));
  }

  /** Small and large values alike often. */
  times(low: number, high: number): number {
    return Number((low * (high / low) ** this.share()).toPrecision(3));
  }

  of<T>(choices: readonly T[]): T {
    return choices[Math.floor(this.share() * choices.length)] as T;
  }
}

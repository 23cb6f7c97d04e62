/**
 * The smallest set of pieces with which no dive loses more than an eye sees. All sets of up to four are tried, save those that cannot
 * do whatever is added: a larger set is never worse. Where none of them does, one is put together greedily.
 */
import { checkpoint } from "../checkpoint.js";
import { itemAt } from "../lists/non-empty.js";
import { includes, NO_PIECE, onlyPiece, type PieceSet, placesIn, sizeOf, wholeSet } from "./piece-set.js";

/** What the search knows of a way to film a dive. */
export interface Way {
  requires: PieceSet;
  delta_e00: number;
  loss_stops: number;
}

/** Ways of one dive, the least colour error first. */
export type WaysOfDive = readonly Way[];

export interface FoundSet {
  set: PieceSet;
  method: "exact" | "greedy";
}

/** Sets up to this size are all tried. */
export const LARGEST_EXACT = 4;

/** What a dive without light to film by counts for: more than any colour error. Never told. */
const IN_THE_DARK_DELTA_E00 = 1000;

/** The best way with a set; undefined where the dive cannot be filmed with it. */
export const bestWith = <Of extends Way>(ways: readonly Of[], set: PieceSet): Of | undefined =>
  ways.find(({ requires }) => includes(set, requires));

const errorWith = (ways: WaysOfDive, set: PieceSet): number =>
  bestWith(ways, set)?.delta_e00 ?? IN_THE_DARK_DELTA_E00;

/** What a dive with a set loses against the whole kit; undefined where it cannot be filmed with the set. */
export function regretOf(ways: WaysOfDive, set: PieceSet, pieces: number): number | undefined {
  const best = bestWith(ways, set);
  return best === undefined ? undefined : best.delta_e00 - errorWith(ways, wholeSet(pieces));
}

/** Totals are told to a hundredth; what is alike then is a tie. */
const hundredths = (total: number): number => Math.round(total * 100);

interface Score {
  regret: number;
  loss: number;
}

export class KitSearch {
  readonly #least: readonly number[];

  constructor(
    readonly dives: readonly WaysOfDive[],
    readonly pieces: number,
    readonly limit_delta_e00: number,
  ) {
    this.#least = dives.map((ways) => errorWith(ways, wholeSet(pieces)));
  }

  /** By how much a dive's colour error with a set lies above that with everything. */
  #regret(dive: number, set: PieceSet): number {
    return errorWith(itemAt(this.dives, dive), set) - itemAt(this.#least, dive);
  }

  /** Whether no dive loses as much as the limit. */
  serves(set: PieceSet): boolean {
    return this.dives.every((_, dive) => this.#regret(dive, set) < this.limit_delta_e00);
  }

  #score(set: PieceSet): Score {
    return {
      regret: hundredths(this.dives.reduce((sum, _, dive) => sum + this.#regret(dive, set), 0)),
      loss: hundredths(this.dives.reduce((sum, ways) => sum + (bestWith(ways, set)?.loss_stops ?? 0), 0)),
    };
  }

  /** The best of the smallest sets that serve every dive. */
  find(): FoundSet {
    for (let size = 0; size <= Math.min(LARGEST_EXACT, this.pieces); size += 1) {
      const set = this.#bestOf(size);
      if (set !== undefined) return { set, method: "exact" };
    }
    return { set: this.#greedily(), method: "greedy" };
  }

  /** In the order of ids, so that the first of equals wins. */
  #bestOf(size: number): PieceSet | undefined {
    const { pieces } = this;
    let best: { set: PieceSet; score: Score } | undefined;
    const grow = (set: PieceSet, from: number, left: number): void => {
      if (left === 0) {
        if (!this.serves(set)) return;
        const score = this.#score(set);
        if (best === undefined || isBetter(score, best.score)) best = { set, score };
        return;
      }
      // With all that may still come, it would not do: nor will it with less.
      if (!this.serves(set | (wholeSet(pieces) & ~wholeSet(from)))) return;
      checkpoint();
      for (let place = from; place <= pieces - left; place += 1)
        grow(set | onlyPiece(place), place + 1, left - 1);
    };
    grow(NO_PIECE, 0, size);
    return best?.set;
  }

  /** By how much the dives lie above the limit together. */
  #excess(set: PieceSet): number {
    return this.dives.reduce(
      (sum, _, dive) => sum + Math.max(0, this.#regret(dive, set) - this.limit_delta_e00),
      0,
    );
  }

  /** Adds what gains most for each piece that it takes, as long as a dive lies above the limit; then takes away what is not needed. */
  #greedily(): PieceSet {
    let set = NO_PIECE;
    while (!this.serves(set)) set |= this.#nextFor(set);
    for (const place of placesIn(set).reverse()) {
      const less = set & ~onlyPiece(place);
      if (this.serves(less)) set = less;
    }
    return set;
  }

  /** The pieces of one way to film a dive that are not there yet. */
  #nextFor(set: PieceSet): PieceSet {
    const excess = this.#excess(set);
    let best = { lacking: wholeSet(this.pieces) & ~set, gain: Number.NEGATIVE_INFINITY };
    const known = new Set<PieceSet>();
    for (const { requires } of this.dives.flat()) {
      const lacking = requires & ~set;
      if (lacking === NO_PIECE || known.has(lacking)) continue;
      checkpoint();
      known.add(lacking);
      const gain = (excess - this.#excess(set | lacking)) / sizeOf(lacking);
      const isAlike = Math.abs(gain - best.gain) < 1e-9;
      if (isAlike ? lacking < best.lacking : gain > best.gain) best = { lacking, gain };
    }
    return best.lacking;
  }
}

const isBetter = (one: Score, other: Score): boolean =>
  one.regret < other.regret || (one.regret === other.regret && one.loss < other.loss);

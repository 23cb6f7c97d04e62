// What the tests of the search share: shelves drawn at random, and the definition of the set that is sought.
import { expect } from "vitest";
import { onlyPiece, placesIn } from "./piece-set.js";
import { KitSearch, LARGEST_EXACT, type Way } from "./search.js";

/** Numbers from 0 to 1, the same for each seed: splitmix32, after Steele, Lea & Flood (2014). */
export function drawsFrom(seed: number): () => number {
  let state = Math.imul(seed, 0x85ebca6b) >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}

export interface Shelf {
  pieces: number;
  limit: number;
  dives: Way[][];
}

/** Dives with ways that take up to three pieces each, errors and losses to a hundredth, so that ties are real ones. */
function shelf(seed: number, { dark = 0.1 } = {}): Shelf {
  const draw = drawsFrom(seed);
  const upTo = (most: number) => Math.floor(draw() * (most + 1));
  const pieces = 3 + upTo(6);
  const dives = Array.from({ length: 1 + upTo(4) }, () => {
    const ways: Way[] = Array.from({ length: 3 + upTo(12) }, () => ({
      requires: Array.from({ length: 1 + upTo(2) }, () => onlyPiece(upTo(pieces - 1))).reduce(
        (a, b) => a | b,
        0,
      ),
      delta_e00: (200 + upTo(600)) / 100,
      loss_stops: upTo(30) / 10,
    }));
    if (draw() >= dark) ways.push({ requires: 0, delta_e00: (500 + upTo(600)) / 100, loss_stops: 0 });
    return ways.sort((a, b) => a.delta_e00 - b.delta_e00 || a.loss_stops - b.loss_stops);
  });
  return { pieces, limit: [0.05, 0.5, 1, 2.5][upTo(3)] ?? 1, dives };
}

/** Every subset of the pieces as a list of places, tried without bits, bounds or order: the definition, word by word. */
function byTryingAll({ pieces, limit, dives }: Shelf): number[] | undefined {
  const everything = Array.from({ length: pieces }, (_, place) => place);
  const subsets = Array.from({ length: 2 ** pieces }, (_, nth) =>
    everything.filter((place) => Math.floor(nth / 2 ** place) % 2 === 1),
  );
  const used = (ways: Way[], set: number[]) =>
    ways
      .filter(({ requires }) =>
        everything.every((place) => (requires >> place) % 2 === 0 || set.includes(place)),
      )
      .sort((a, b) => a.delta_e00 - b.delta_e00 || a.loss_stops - b.loss_stops)[0];
  const told = subsets.flatMap((set) => {
    const each = dives.map((ways) => ({ own: used(ways, set), all: used(ways, everything) }));
    const regrets = each.map(({ own, all }) => (own && all ? own.delta_e00 - all.delta_e00 : all ? 1000 : 0));
    if (regrets.some((regret) => regret >= limit)) return [];
    const total = Math.round(100 * regrets.reduce((a, b) => a + b, 0));
    const loss = Math.round(100 * each.reduce((sum, { own }) => sum + (own?.loss_stops ?? 0), 0));
    return [{ set, total, loss }];
  });
  told.sort(
    (a, b) =>
      a.set.length - b.set.length ||
      a.total - b.total ||
      a.loss - b.loss ||
      (a.set.map((n) => String(n).padStart(2, "0")).join() <
      b.set.map((n) => String(n).padStart(2, "0")).join()
        ? -1
        : 1),
  );
  return told[0]?.set;
}

export const found = ({ dives, pieces, limit }: Shelf) => new KitSearch(dives, pieces, limit).find();

/** Holds the search against trying all, over so many shelves. @returns for how many up to four pieces are enough */
export function holdAgainstAll(first: number, count: number): number {
  let exact = 0;
  for (let seed = first; seed < first + count; seed += 1) {
    const one = shelf(seed);
    const wanted = byTryingAll(one);
    const { set, method } = found(one);
    if (wanted === undefined || wanted.length > LARGEST_EXACT) {
      expect(method).toBe("greedy");
      continue;
    }
    exact += 1;
    expect(method).toBe("exact");
    expect(placesIn(set)).toEqual(wanted);
  }
  return exact;
}

/**
 * Who gets which piece of a shared shelf, so that the one who is worst off is as well off as can be, then the next one, and so on
 * (leximin; Sen 1970, Collective choice and social welfare, chapter 9, after Rawls).
 *
 * Exact: from the highest figure down, as few as possible have it (a lexicographic bottleneck assignment; Burkard and Rendl 1991,
 * Lexicographic bottleneck problems, Operations Research Letters 10, 303). What is even then goes by ids: guest by guest, the lowest
 * figure, and of pieces that leave the same the first. Nothing depends on the order in which guests or pieces are given.
 */
import { itemAt } from "../lists/non-empty.js";
import { Network } from "./network.js";

/** Someone who would be better off with a piece. */
export interface Claimant {
  id: string;
  /** What is to be low, as a whole number: without any piece. */
  bare: number;
  /** With each piece that fits. */
  pieces: readonly { id: string; level: number }[];
}

/** The order of ids: by UTF-16 code units, alike in every engine and language. */
const byId = <T extends { id: string }>(all: readonly T[]): T[] =>
  [...all].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));

/** To begin with, so that little is left to better: who is worst off without takes the best of what is left. */
function greedy(guests: readonly Claimant[], stock: ReadonlyMap<string, number>): Map<string, string> {
  const left = new Map(stock);
  const given = new Map<string, string>();
  for (const { id: guest, pieces } of [...guests].sort((a, b) => b.bare - a.bare)) {
    const there = pieces.filter(({ id }) => (left.get(id) ?? 0) > 0);
    const [first] = there;
    if (first === undefined) continue;
    const { id } = there.reduce((best, next) => (next.level < best.level ? next : best), first);
    left.set(id, (left.get(id) ?? 0) - 1);
    given.set(guest, id);
  }
  return given;
}

/** A way in which someone can be served. */
interface Way {
  arc: number;
  level: number;
  piece: string | undefined;
}

/**
 * @param stock how many of each piece there are, by its id
 * @returns the piece of each claimant, by ids; no entry for who gets none
 */
export function handOut(
  claimants: readonly Claimant[],
  stock: ReadonlyMap<string, number>,
): Map<string, string> {
  const guests = byId(claimants);
  const pieces = [...stock.keys()].sort();
  const place = new Map(pieces.map((id, p) => [id, guests.length + p]));
  // What is in no guest's hands is on the shelf, where each guest is led back to: so all that flows goes round.
  const shelf = guests.length + pieces.length;
  const begun = greedy(guests, stock);
  const network = new Network(shelf + 1);
  for (const [id, quantity] of stock) {
    const flow = [...begun.values()].filter((piece) => piece === id).length;
    network.add({ from: place.get(id) ?? shelf, to: shelf, capacity: quantity, flow });
  }
  const ways = guests.map((guest, g): Way[] => {
    const wayTo = (to: number, level: number, piece?: string): Way => {
      const flow = begun.get(guest.id) === piece ? 1 : 0;
      return { arc: network.add({ from: g, to, capacity: 1, flow }), level, piece };
    };
    return [
      ...byId(guest.pieces).flatMap(({ id, level }) => {
        const to = place.get(id);
        return to === undefined ? [] : [wayTo(to, level, id)];
      }),
      wayTo(shelf, guest.bare),
    ];
  });

  const all = ways.flat();
  for (const level of [...new Set(all.map((way) => way.level))].sort((a, b) => b - a))
    network.settle(new Map(all.filter((way) => way.level === level).map(({ arc }) => [arc, 1])));
  for (const own of ways) {
    const order = own.map((_, i) => i).sort((a, b) => itemAt(own, a).level - itemAt(own, b).level || a - b);
    network.settle(new Map(order.map((i, rank) => [itemAt(own, i).arc, rank])));
  }

  const found = new Map<string, string>();
  for (const [g, own] of ways.entries()) {
    const piece = own.find(({ arc }) => network.flowOf(arc) === 1)?.piece;
    if (piece !== undefined) found.set(itemAt(guests, g).id, piece);
  }
  return found;
}

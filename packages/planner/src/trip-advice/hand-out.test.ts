// Held against every allocation that there is, in cases small enough to list them, and against the greedy one in large ones.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Claimant, handOut } from "./hand-out.js";

/** Every allocation, worked out in the plainest way there is: each guest in turn takes each piece that is left, or none. */
function everyAllocation(
  [first, ...others]: readonly Claimant[],
  stock: ReadonlyMap<string, number>,
): Map<string, string>[] {
  if (first === undefined) return [new Map()];
  const without = everyAllocation(others, stock);
  const withPiece = first.pieces.flatMap(({ id }) => {
    const left = stock.get(id) ?? 0;
    if (left === 0) return [];
    return everyAllocation(others, new Map([...stock, [id, left - 1]])).map(
      (rest) => new Map([[first.id, id], ...rest]),
    );
  });
  return [...without, ...withPiece];
}

const levelOf = ({ bare, pieces }: Claimant, piece: string | undefined): number =>
  pieces.find(({ id }) => id === piece)?.level ?? bare;

/** What everyone is left with, the worst off first. */
const served = (claimants: readonly Claimant[], given: ReadonlyMap<string, string>): number[] =>
  claimants.map((one) => levelOf(one, given.get(one.id))).sort((a, b) => b - a);

/** Below 0 where the first is the better one. */
function compare(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at === -1 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}

/** Of all that serve best, the one that the first by id likes best, then the next: by level, then by the id of the piece. */
function bestOf(claimants: readonly Claimant[], stock: ReadonlyMap<string, number>): Map<string, string> {
  const sorted = [...claimants].sort((a, b) => (a.id < b.id ? -1 : 1));
  const likes = (one: Claimant, given: ReadonlyMap<string, string>): [number, string] => {
    const piece = given.get(one.id);
    return [levelOf(one, piece), piece ?? "\uffff"];
  };
  const all = everyAllocation(claimants, stock);
  return all.reduce((best, next) => {
    const better = compare(served(claimants, next), served(claimants, best));
    if (better !== 0) return better < 0 ? next : best;
    for (const one of sorted) {
      const [level, piece] = likes(one, next);
      const [bestLevel, bestPiece] = likes(one, best);
      if (level !== bestLevel) return level < bestLevel ? next : best;
      if (piece !== bestPiece) return piece < bestPiece ? next : best;
    }
    return best;
  });
}

/** The worst off takes what serves best of what is left, then the next worst off. */
function greedy(claimants: readonly Claimant[], stock: ReadonlyMap<string, number>): Map<string, string> {
  const left = new Map(stock);
  const given = new Map<string, string>();
  for (const one of [...claimants].sort((a, b) => b.bare - a.bare)) {
    const [best] = one.pieces.filter(({ id }) => (left.get(id) ?? 0) > 0).sort((a, b) => a.level - b.level);
    if (best === undefined) continue;
    left.set(best.id, (left.get(best.id) ?? 0) - 1);
    given.set(one.id, best.id);
  }
  return given;
}

/** Few levels make many ties. */
const shops = ({ guests, pieces, levels }: { guests: number; pieces: number; levels: number }) =>
  fc.tuple(
    fc.array(
      fc.record({
        bare: fc.integer({ min: 1, max: levels }),
        fits: fc.array(fc.option(fc.integer({ min: 0, max: levels }), { nil: undefined }), {
          minLength: pieces,
          maxLength: pieces,
        }),
      }),
      { minLength: 1, maxLength: guests },
    ),
    fc.array(fc.integer({ min: 1, max: 2 }), { minLength: pieces, maxLength: pieces }),
  );

function shopOf([guests, counts]: [{ bare: number; fits: (number | undefined)[] }[], number[]]) {
  const stock = new Map(counts.map((count, p) => [`p${p}`, count]));
  const claimants = guests.map(({ bare, fits }, g): Claimant => {
    const pieces = fits.flatMap((level, p) =>
      level === undefined || level >= bare ? [] : [{ id: `p${p}`, level }],
    );
    return { id: `g${g}`, bare, pieces };
  });
  return { claimants, stock };
}

describe("handing out", () => {
  it.each([2, 4, 12])("is the best of all there are, also by ids: %i levels", (levels) => {
    fc.assert(
      fc.property(shops({ guests: 4, pieces: 3, levels }), (drawn) => {
        const { claimants, stock } = shopOf(drawn);
        expect(handOut(claimants, stock)).toEqual(bestOf(claimants, stock));
      }),
      { numRuns: 150 },
    );
  });

  it("is never worse than greedy, hands out no more than there is, and the same whoever is named first", () => {
    fc.assert(
      fc.property(shops({ guests: 30, pieces: 20, levels: 1000 }), fc.integer(), (drawn, turn) => {
        const { claimants, stock } = shopOf(drawn);
        const given = handOut(claimants, stock);
        expect(compare(served(claimants, given), served(claimants, greedy(claimants, stock)))).toBeLessThan(
          1,
        );
        const used = [...given.values()];
        for (const [id, count] of stock)
          expect(used.filter((one) => one === id).length).toBeLessThanOrEqual(count);
        const turned = <T>(list: readonly T[]): T[] => {
          const at = Math.abs(turn) % list.length;
          return [...list.slice(at), ...list.slice(0, at)].reverse();
        };
        const again = handOut(
          turned(claimants).map((one) => ({ ...one, pieces: [...one.pieces].reverse() })),
          new Map(turned([...stock])),
        );
        expect([...again].sort()).toEqual([...given].sort());
      }),
      { numRuns: 25 },
    );
  });

  it("has fewer at a level even where one who is there could be better off", () => {
    // Worst off are two with 5 and one with 4 if b takes p; if a takes it, 5, 4 and 4.
    const claimants: Claimant[] = [
      { id: "a", bare: 5, pieces: [{ id: "p", level: 4 }] },
      { id: "b", bare: 5, pieces: [{ id: "p", level: 1 }] },
      { id: "c", bare: 5, pieces: [] },
    ];
    // Both leave two at 5; the one that is lower beside them is b's.
    expect(handOut(claimants, new Map([["p", 1]]))).toEqual(new Map([["b", "p"]]));
  });

  it("gives nobody anything from an empty shelf", () => {
    expect(handOut([{ id: "a", bare: 3, pieces: [] }], new Map())).toEqual(new Map());
  });

  it("has a piece for each of forty guests where there are forty", () => {
    const random = (n: number) => ((n * 2654435761) % 4294967296) / 4294967296;
    const pieces = Array.from({ length: 40 }, (_, p) => `p${String(p).padStart(2, "0")}`);
    const claimants = Array.from({ length: 40 }, (_, g): Claimant => {
      const all = pieces.map((id, p) => ({ id, level: Math.floor(300 + 900 * random(g * 40 + p + 1)) }));
      return { id: `g${g}`, bare: 1400 + g, pieces: all };
    });
    const given = handOut(claimants, new Map(pieces.map((id) => [id, 1])));
    expect(given.size).toBe(40);
  });
});

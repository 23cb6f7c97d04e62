import { describe, expect, it } from "vitest";
import { includes, onlyPiece, placesIn, sizeOf, wholeSet } from "./piece-set.js";
import { bestWith, KitSearch, regretOf, type Way } from "./search.js";
import { drawsFrom, found, holdAgainstAll, type Shelf } from "./search.test-support.js";

describe("the search for the smallest set", () => {
  it("finds the very set that trying all subsets does, as long as four pieces are enough", () => {
    expect(holdAgainstAll(1, 80)).toBeGreaterThan(50);
  });

  it("beyond four finds a set that serves every dive and has no piece too many, and says that it may not be the smallest", () => {
    // Each dive needs a piece of its own, and two share one beside.
    const dives = Array.from({ length: 6 }, (_, d): Way[] => [
      { requires: onlyPiece(d) | (d < 2 ? onlyPiece(6) : 0), delta_e00: 1, loss_stops: 0 },
      { requires: 0, delta_e00: 9, loss_stops: 0 },
    ]);
    const search = new KitSearch(dives, 8, 1);
    const { set, method } = search.find();
    expect(method).toBe("greedy");
    expect(placesIn(set)).toEqual([0, 1, 2, 3, 4, 5, 6]);
    for (const place of placesIn(set)) expect(search.serves(set & ~onlyPiece(place))).toBe(false);
  });

  it("greedily is never worse than what it says: every dive below the limit", () => {
    const greedy = Array.from({ length: 60 }, (_, seed): Shelf => {
      const draw = drawsFrom(seed + 1000);
      const dives = Array.from({ length: 9 }, (_, d): Way[] =>
        [
          {
            requires: onlyPiece(d) | onlyPiece(9 + Math.floor(draw() * 6)),
            delta_e00: 2 + draw(),
            loss_stops: 1,
          },
          { requires: onlyPiece(Math.floor(draw() * 15)), delta_e00: 5 + draw(), loss_stops: 0 },
          { requires: 0, delta_e00: 12, loss_stops: 0 },
        ].sort((a, b) => a.delta_e00 - b.delta_e00),
      );
      return { pieces: 15, limit: 1, dives };
    });
    for (const one of greedy) {
      const { set, method } = found(one);
      expect(method).toBe("greedy");
      for (const ways of one.dives) expect(regretOf(ways, set, one.pieces)).toBeLessThan(one.limit);
    }
  });

  it("takes nothing where nothing is needed, and needs light before all", () => {
    const bare: Way = { requires: 0, delta_e00: 5, loss_stops: 0 };
    expect(found({ pieces: 2, limit: 1, dives: [[bare]] }).set).toBe(0);
    const lit: Way = { requires: onlyPiece(1), delta_e00: 80, loss_stops: 0 };
    expect(placesIn(found({ pieces: 2, limit: 1, dives: [[bare], [lit]] }).set)).toEqual([1]);
    expect(regretOf([lit], 0, 2)).toBeUndefined();
  });

  it("tries every set of four among 24 pieces for 12 dives at once", () => {
    const draw = drawsFrom(7);
    const dives = Array.from({ length: 12 }, (): Way[] =>
      Array.from({ length: 24 }, (_, place) => ({
        requires: onlyPiece(place) | onlyPiece(Math.floor(draw() * 24)),
        delta_e00: 3 + 6 * draw(),
        loss_stops: draw(),
      })).sort((a, b) => a.delta_e00 - b.delta_e00),
    );
    const { user: before } = process.cpuUsage();
    found({ pieces: 24, limit: 1, dives });
    expect((process.cpuUsage().user - before) / 1000).toBeLessThan(1500);
  });
});

describe("sets of pieces", () => {
  it("know their places and size", () => {
    expect(placesIn(0b10110)).toEqual([1, 2, 4]);
    expect(sizeOf(0b10110)).toBe(3);
    expect(sizeOf(wholeSet(24))).toBe(24);
    expect(includes(0b111, 0b101)).toBe(true);
    expect(includes(0b011, 0b101)).toBe(false);
    expect(bestWith([], 0)).toBeUndefined();
  });
});

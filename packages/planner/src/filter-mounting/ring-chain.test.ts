import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StepRing } from "../scene/filter-mounting-scene.js";
import {
  compareRoutes,
  lengthened,
  type RingPreference,
  type RingRoute,
  shortestChain,
} from "./ring-chain.js";

const ring = (id: string, from_mm: number, to_mm: number, thickness_mm = 3): StepRing => ({
  id,
  from_mm,
  to_mm,
  thickness_mm,
});
const ids = (route: RingRoute | undefined) => route?.rings.map(({ id }) => id);

/** Every order of every subset that leads there, none left out. */
function bruteForce(
  from: number,
  to: number,
  rings: readonly StepRing[],
  preference: RingPreference,
): RingRoute | undefined {
  let best: RingRoute | undefined;
  const extend = (route: RingRoute, at: number, left: readonly StepRing[]): void => {
    if (at === to && (!best || compareRoutes(route, best, preference) < 0)) best = route;
    for (const next of left) {
      if (next.from_mm !== at) continue;
      extend(
        lengthened(route, next),
        next.to_mm,
        left.filter((other) => other !== next),
      );
    }
  };
  extend({ rings: [], stepped_down_mm: 0, thickness_mm: 0 }, from, rings);
  return best;
}

const threads = fc.constantFrom(49, 52, 58, 67, 77);
const preferences = fc.constantFrom("fewest" as const, "thinnest" as const);
const ringSet = fc
  .array(fc.tuple(threads, threads, fc.constantFrom(1.5, 2, 2.7, 3, 5)), { maxLength: 7 })
  .map((list) => list.map(([from, to, thickness], i) => ring(`r${i}`, from, to, thickness)));

describe("chain of step rings", () => {
  it("needs none where the threads are the same", () => {
    expect(shortestChain(67, 67, [ring("a", 67, 77)])).toEqual({
      rings: [],
      stepped_down_mm: 0,
      thickness_mm: 0,
    });
  });

  it("takes one ring rather than two, and the thinner of two like rings", () => {
    const owned = [ring("a", 52, 58), ring("b", 58, 67), ring("c", 52, 67, 4), ring("d", 52, 67, 2)];
    expect(ids(shortestChain(52, 67, owned))).toEqual(["d"]);
  });

  it("takes three rings that step up rather than two of which one steps down", () => {
    const owned = [
      ring("down", 67, 58),
      ring("up", 58, 82),
      ring("a", 67, 72),
      ring("b", 72, 77),
      ring("c", 77, 82),
    ];
    expect(ids(shortestChain(67, 82, owned))).toEqual(["a", "b", "c"]);
    expect(ids(shortestChain(67, 82, owned.slice(0, 2)))).toEqual(["down", "up"]);
  });

  it("takes two thin rings rather than a thick one where thinnest counts first", () => {
    const owned = [ring("a", 52, 58, 2), ring("b", 58, 67, 2), ring("thick", 52, 67, 8)];
    expect(ids(shortestChain(52, 67, owned))).toEqual(["thick"]);
    expect(ids(shortestChain(52, 67, owned, "thinnest"))).toEqual(["a", "b"]);
  });

  it("does not turn a ring about", () => {
    expect(shortestChain(67, 77, [ring("a", 77, 67)])).toBeUndefined();
  });

  it("is what trying all orders of all subsets finds", () => {
    let closed = 0;
    fc.assert(
      fc.property(threads, threads, ringSet, preferences, (from, to, owned, preference) => {
        const found = shortestChain(from, to, owned, preference);
        const best = bruteForce(from, to, owned, preference);
        expect(ids(found)).toEqual(ids(best));
        if (found && found.rings.length > 0) closed++;
        expect(new Set(ids(found)).size).toBe(found?.rings.length ?? 0);
      }),
      { seed: 1959, numRuns: 500 },
    );
    expect(closed).toBeGreaterThan(50);
  });

  it("never gets worse by a ring that is added, nor changes with the order in which rings are listed", () => {
    fc.assert(
      fc.property(threads, threads, ringSet, threads, threads, (from, to, owned, extraFrom, extraTo) => {
        const before = shortestChain(from, to, owned);
        const after = shortestChain(from, to, [...owned, ring("extra", extraFrom, extraTo)]);
        if (before) expect(compareRoutes(after!, before)).toBeLessThanOrEqual(0);
        expect(ids(shortestChain(from, to, [...owned].reverse()))).toEqual(ids(before));
      }),
      { seed: 1960, numRuns: 300 },
    );
  });
});

describe("of two chains", () => {
  const chain = (...rings: StepRing[]): RingRoute => ({
    rings,
    stepped_down_mm: 0,
    thickness_mm: rings.reduce((sum, { thickness_mm }) => sum + thickness_mm, 0),
  });
  const one = chain(ring("a", 52, 67, 8));
  const two = chain(ring("b", 52, 58, 2), ring("c", 58, 67, 2));

  it("the one of fewer rings is better, unless thinnest counts first; of two as thin it is better again", () => {
    expect(compareRoutes(one, two)).toBeLessThan(0);
    expect(compareRoutes(two, one)).toBeGreaterThan(0);
    expect(compareRoutes(one, two, "thinnest")).toBeGreaterThan(0);
    const thin = chain(ring("d", 52, 67, 4));
    expect(compareRoutes(thin, two, "thinnest")).toBeLessThan(0);
    expect(compareRoutes(two, thin, "thinnest")).toBeGreaterThan(0);
  });

  it("that are alike the one whose ids come first is better, whichever is asked first", () => {
    const other = chain(ring("b", 52, 67, 8));
    expect([compareRoutes(one, other), compareRoutes(other, one), compareRoutes(one, one)]).toEqual([
      -1, 1, 0,
    ]);
  });
});

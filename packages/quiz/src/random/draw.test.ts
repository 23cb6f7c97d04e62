import { describe, expect, it } from "vitest";
import { Draw, hash32 } from "./draw.js";

describe("the hash", () => {
  it("is FNV-1a, 32 bits (test vectors of the algorithm's authors, isthe.com/chongo/tech/comp/fnv: '', 'a', 'foobar')", () => {
    expect(hash32("")).toBe(0x811c9dc5);
    expect(hash32("a")).toBe(0xe40c292c);
    expect(hash32("foobar")).toBe(0xbf9cf968);
  });
});

describe("drawing", () => {
  it("is the same for the same seed and another for another", () => {
    const ten = (seed: string) => {
      const draw = new Draw(seed);
      return Array.from({ length: 10 }, () => draw.below(1000));
    };
    expect(ten("a")).toEqual(ten("a"));
    expect(ten("a")).not.toEqual(ten("b"));
  });

  it("is even: chi-square over 10 cells below 27.9 (99.9 % point for 9 degrees of freedom, any table), seed by seed", () => {
    const cells = new Array<number>(10).fill(0);
    // One draw from each of many seeds: near seeds must not give near draws.
    for (let i = 0; i < 20_000; i++) {
      const cell = new Draw(`paper ${i}`).below(10);
      cells[cell] = cells[cell]! + 1;
    }
    const chiSquare = cells.reduce((sum, count) => sum + (count - 2000) ** 2 / 2000, 0);
    expect(chiSquare).toBeLessThan(27.9);
  });

  it("shuffles without loss, samples in order, and refuses to pick from nothing", () => {
    const draw = new Draw("s");
    const list = ["a", "b", "c", "d", "e"];
    expect([...draw.shuffle(list)].sort()).toEqual(list);
    for (let i = 0; i < 50; i++) {
      const sample = draw.sample(list, 3);
      expect(sample).toHaveLength(3);
      expect(sample).toEqual([...sample].sort());
    }
    expect(() => draw.pick([])).toThrow(RangeError);
  });

  it("reaches every order of three about equally often", () => {
    const seen = new Map<string, number>();
    for (let i = 0; i < 6000; i++) {
      const order = new Draw(`order ${i}`).shuffle(["a", "b", "c"]).join("");
      seen.set(order, (seen.get(order) ?? 0) + 1);
    }
    expect(seen.size).toBe(6);
    for (const count of seen.values()) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});

import { describe, expect, it } from "vitest";
import { AnswerCache } from "./answer-cache.js";

const kilobytes = (count: number) => new Uint8Array(1024 * count);

describe("the cache of answers", () => {
  it("gives back the bytes that it keeps, and copies of what it was given", () => {
    const cache = new AnswerCache(64 * 1024);
    const bytes = Uint8Array.of(1, 2, 3);
    cache.keep("a", bytes);
    bytes[0] = 9;
    expect(cache.get("a")).toEqual(Buffer.of(1, 2, 3));
    expect(cache.get("b")).toBeUndefined();
  });

  it("never holds more than its bytes, and lets go first of what was asked for longest ago", () => {
    const cache = new AnswerCache(64 * 1024);
    for (let n = 0; n < 6; n += 1) cache.keep(`${n}`, kilobytes(10));
    expect(cache.get("0")).toBeDefined();
    cache.keep("6", kilobytes(10));
    expect(cache.get("1")).toBeUndefined();
    expect(cache.get("0")).toBeDefined();
    for (let n = 0; n < 500; n += 1) {
      cache.keep(`more ${n}`, kilobytes(n % 20));
      expect(cache.bytes).toBeLessThanOrEqual(64 * 1024);
    }
    expect(cache.bytes).toBeGreaterThan(32 * 1024);
  });

  it("does not keep what is larger than all of it, nor anything where there is none", () => {
    const cache = new AnswerCache(4096);
    cache.keep("large", kilobytes(5));
    expect(cache.get("large")).toBeUndefined();
    const off = new AnswerCache(0);
    off.keep("a", kilobytes(1));
    expect(off.get("a")).toBeUndefined();
    expect(off.bytes).toBe(0);
  });

  it("tells who watches of hits and misses, and of nothing where there is none", () => {
    const seen: string[] = [];
    for (const cache of [new AnswerCache(4096), new AnswerCache(0)]) {
      cache.watch((lookup) => seen.push(lookup));
      cache.get("a");
      cache.keep("a", Uint8Array.of(1));
      cache.get("a");
    }
    expect(seen).toEqual(["miss", "hit"]);
  });
});

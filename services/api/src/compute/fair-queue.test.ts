import { describe, expect, it } from "vitest";
import { FairQueue } from "./fair-queue.js";

const queue = (limits: object = {}) =>
  new FairQueue<string>({ runningPerClient: 2, waitingPerClient: 2, waiting: 5, ...limits });

/** All that is served without anything being finished. */
function served(line: FairQueue<string>): string[] {
  const all: string[] = [];
  for (let next = line.next(); next !== undefined; next = line.next()) all.push(next);
  return all;
}

describe("a line for each client", () => {
  it("is served in turn, however much one of them asks for", () => {
    const line = queue({ runningPerClient: 9, waitingPerClient: 9, waiting: 9 });
    for (const n of [1, 2, 3, 4]) line.add("much", `much ${n}`);
    line.add("little", "little 1");
    line.add("other", "other 1");
    expect(served(line)).toEqual(["much 1", "little 1", "other 1", "much 2", "much 3", "much 4"]);
  });

  it("lets so many of a client run, and the next when one has run", () => {
    const line = queue();
    for (const n of [1, 2, 3, 4]) line.add("a", `a${n}`);
    expect(served(line)).toEqual(["a1", "a2"]);
    line.add("b", "b1");
    expect(served(line)).toEqual(["b1"]);
    line.ran("a");
    expect(served(line)).toEqual(["a3"]);
    expect(line.waiting).toBe(1);
  });

  it("is full for a client with what it may have, and for all with what there may be", () => {
    const line = queue();
    for (const n of [1, 2, 3, 4]) {
      expect(line.fullFor("a")).toBeUndefined();
      line.add("a", `a${n}`);
    }
    expect(line.fullFor("a")).toBe("client");
    expect(line.fullFor("b")).toBeUndefined();
    line.add("b", "b1");
    expect(line.fullFor("c")).toBe("all");
    expect(served(line)).toEqual(["a1", "b1", "a2"]);
    expect(line.fullFor("c")).toBeUndefined();
    // Those that run count, too.
    expect(line.fullFor("a")).toBe("client");
    line.ran("a");
    expect(line.fullFor("a")).toBeUndefined();
  });

  it("gives up what waits, and not what runs", () => {
    const line = queue({ runningPerClient: 1 });
    line.add("a", "a1");
    line.add("a", "a2");
    expect(served(line)).toEqual(["a1"]);
    expect(line.drop("a", "a1")).toBe(false);
    expect(line.drop("a", "a2")).toBe(true);
    expect(line.drop("a", "a2")).toBe(false);
    expect(line.waiting).toBe(0);
    line.ran("a");
    expect(served(line)).toEqual([]);
  });
});

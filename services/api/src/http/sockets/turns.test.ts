import { describe, expect, it } from "vitest";
import { eventually } from "../../eventually.test-support.js";
import { Turns } from "./turns.js";

/** Keeps the thread for so long. */
function spin(time_ms: number): void {
  const end_ms = performance.now() + time_ms;
  while (performance.now() < end_ms);
}

describe("turns", () => {
  it("do what is little at once, in order", () => {
    const turns = new Turns();
    const done: number[] = [];
    for (let n = 0; n < 100; n += 1) turns.do("a", () => done.push(n));
    expect(done).toEqual(Array.from({ length: 100 }, (_, n) => n));
    expect(turns.waiting).toBe(0);
  });

  it("serve who asks for little before the rest of what another has asked for", async () => {
    const turns = new Turns();
    const done: string[] = [];
    for (let n = 0; n < 40; n += 1)
      turns.do("greedy", () => {
        spin(4);
        done.push("greedy");
      });
    // Three times four is more than a turn has.
    expect(done.length).toBeLessThanOrEqual(3);
    turns.do("modest", () => done.push("modest"));
    await eventually(() => expect(done).toContain("modest"));
    expect(done.indexOf("modest")).toBeLessThanOrEqual(4);
    await eventually(() => expect(done).toHaveLength(41));
    expect(turns.waiting).toBe(0);
  });

  it("let what comes in be read in between", async () => {
    const turns = new Turns();
    let done = 0;
    for (let n = 0; n < 40; n += 1)
      turns.do("greedy", () => {
        spin(4);
        done += 1;
      });
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(done).toBeLessThan(15);
    await eventually(() => expect(done).toBe(40));
  });

  it("count what a work sets off: to write an answer takes longer than to find it", async () => {
    const clock = { now_ms: 0 };
    const turns = new Turns(() => clock.now_ms);
    let done = 0;
    const work = () => {
      done += 1;
      process.nextTick(() => {
        clock.now_ms += 1;
      });
    };
    clock.now_ms += 1;
    turns.do("greedy", () => {
      clock.now_ms += 5;
    });
    for (let n = 0; n < 40; n += 1) turns.do("greedy", work);
    expect(done).toBe(0);
    for (const most of [6, 12, 18]) {
      await new Promise((resolve) => setImmediate(resolve));
      expect(done).toBeGreaterThanOrEqual(most - 2);
      expect(done).toBeLessThanOrEqual(most);
    }
  });

  it("count what else has passed since they began, such as reading what has come", () => {
    const clock = { now_ms: 0 };
    const turns = new Turns(() => clock.now_ms);
    let done = 0;
    for (let n = 0; n < 40; n += 1) {
      turns.do("greedy", () => {
        done += 1;
      });
      clock.now_ms += 1;
    }
    expect(done).toBe(5);
    expect(turns.waiting).toBe(35);
  });

  it("are left to who connects, but not for ever", async () => {
    const turns = new Turns();
    let done = 0;
    const work = () => {
      spin(4);
      done += 1;
    };
    for (let n = 0; n < 20; n += 1) turns.do("greedy", work);
    const atOnce = done;
    // One connects in each turn.
    for (let turn = 0; turn < 10; turn += 1) {
      turns.come();
      await new Promise((resolve) => setImmediate(resolve));
    }
    expect(done).toBe(atOnce);
    for (let turn = 0; turn < 400; turn += 1) {
      turns.come();
      await new Promise((resolve) => setImmediate(resolve));
    }
    expect(done).toBe(20);
  });

  it("go on after a work that fails", async () => {
    const turns = new Turns();
    expect(() =>
      turns.do("a", () => {
        throw new Error("wrong");
      }),
    ).toThrow("wrong");
    let done = false;
    turns.do("a", () => {
      done = true;
    });
    await eventually(() => expect(done).toBe(true));
  });
});

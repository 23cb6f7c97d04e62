// Guards a batch under way: what it holds for a slow reader, who stops it, what it waits for, and how it ends. Threads are stood in for,
// but where the real ones are to stop.
import type { BatchPlan } from "@sunfathom/answers";
import { describe, expect, it } from "vitest";
import { Abandoned, ComputePool, Crowded, ThreadDied } from "../../compute/pool.js";
import type { Outcome, Task } from "../../compute/tasks.js";
import { BatchRun, type Means } from "./run.js";

const plan = (size: number): BatchPlan => ({
  kind: "items",
  language: undefined,
  size,
  items: Array.from({ length: size }, (_, nth) => ({
    id: `${nth}`,
    operation: "attenuation",
    scene: JSON.stringify({ water_type: "IB", depth_m: 1 + nth / 100 }),
  })),
});

interface Call {
  ids: string[];
  allowance: number;
  stop: () => void;
  done: (outcome: Outcome) => void;
  failed: (error: Error) => void;
}

/** A batch whose slices end as the test says; each scene costs 10 by default. */
function batch(size: number, others: Partial<Means> = {}, weight = 1) {
  const calls: Call[] = [];
  const failures: string[] = [];
  const run = new BatchRun(
    { plan: plan(size), language: "en", query: "", requestId: "r" },
    {
      width: 2,
      pay: () => 0,
      run: (task: Task, allowance, abandon) =>
        new Promise((done, failed) => {
          if (task.kind !== "batch") throw new Error(task.kind);
          const ids = task.slice.scenes.map(({ id }) => id);
          const stop = () => failed(new Abandoned());
          calls.push({ ids, allowance, stop, done, failed });
          abandon(stop);
        }),
      isStopping: () => false,
      failed: (message) => failures.push(message),
      longest_ms: 60_000,
      pause_ms: 60_000,
      ...others,
    },
  );
  const works = (count: number, next?: number): Outcome => ({
    status: "batch",
    bytes: Buffer.alloc(count * weight, "x"),
    answers: count,
    problems: 0,
    cost: 10 * count,
    next,
    failures: [],
  });
  return { run, calls, failures, works };
}

const turn = () => new Promise((resolve) => setTimeout(resolve, 5));

const rest = async (lines: AsyncGenerator<Uint8Array, void>): Promise<string[]> => {
  const texts: string[] = [];
  for await (const line of lines) texts.push(Buffer.from(line).toString());
  return texts;
};

const summaryOf = (texts: string[]) => JSON.parse(texts.at(-1) ?? "").summary;

describe("a reader who stops reading", () => {
  it("has no slice begun for him, and no more held than those under way", async () => {
    const { run, calls, works } = batch(1000, {}, 1000);
    const lines = run.lines();
    const first = lines.next();
    await turn();
    expect(calls).toHaveLength(2);
    for (const { done, ids } of calls) done(works(ids.length));
    await first;
    await turn();
    await turn();
    expect(calls).toHaveLength(2);
    expect(run.heldBytes).toBeLessThanOrEqual(32_000);
    const next = lines.next();
    await next;
    await turn();
    expect(calls.length).toBeLessThanOrEqual(4);
  });
});

describe("a caller who leaves", () => {
  it("has what runs stopped and nothing begun any more, and gets no summary", async () => {
    const { run, calls } = batch(1000);
    const texts = rest(run.lines());
    await turn();
    run.leave();
    expect(await texts).toEqual([]);
    expect(calls).toHaveLength(2);
  });

  // What it holds would else be held until the next pause, and those of a caller who comes again and again together.
  it("ends a batch at once that waits for its budget", async () => {
    const { run, calls } = batch(1000, { pay: () => 30 });
    const texts = rest(run.lines());
    await turn();
    run.leave();
    expect(await texts).toEqual([]);
    expect(calls).toEqual([]);
  });

  it("leaves nothing behind on the threads", async () => {
    const pool = new ComputePool({
      threads: 3,
      niceness: 0,
      runningPerClient: 2,
      waitingPerClient: 2,
      waiting: 3,
    });
    const heavy = {
      water_type: "9C",
      min_depth_m: 0.1,
      max_depth_m: 60,
      lamps: Array(6).fill({ flux_lm: 3000, distance_m: 1 }),
    };
    const items = Array.from({ length: 200 }, (_, nth) => ({
      id: `${nth}`,
      operation: "dive-advice" as const,
      scene: JSON.stringify(heavy),
    }));
    const { run } = batch(0, {});
    const real = new BatchRun(
      {
        plan: { kind: "items", language: undefined, size: 200, items },
        language: "en",
        query: "",
        requestId: "r",
      },
      {
        width: pool.width,
        pay: () => 0,
        run: (task, cost, abandon) => pool.run(task, { client: "a", cost, abandon }),
        isStopping: () => false,
        failed: () => {},
        longest_ms: 60_000,
        pause_ms: 60_000,
      },
    );
    expect(run.heldBytes).toBe(0);
    const lines = real.lines();
    const end = lines.next();
    while (pool.running < 2) await turn();
    real.leave();
    expect((await end).done).toBe(true);
    expect(pool.waiting).toBe(0);
    // What runs stops at its next checkpoint.
    while (pool.running > 0) await turn();
    await pool.close();
  }, 60_000);
});

describe("what is to be paid", () => {
  it("is paid before it is worked for, and what was too much is kept for the next", async () => {
    const paid: number[] = [];
    const pay = (cost: number) => {
      paid.push(cost);
      return 0;
    };
    const { run, calls, works } = batch(20, { width: 1, pay });
    const texts = rest(run.lines());
    await turn();
    calls[0]?.done(works(7, 300));
    await turn();
    expect(calls[1]).toMatchObject({ allowance: 300, ids: expect.arrayContaining(["7", "19"]) });
    calls[1]?.done(works(13));
    expect(summaryOf(await texts)).toEqual({ items: 20, answers: 20, problems: 0, left: 0, cost: 200 });
    // 100 for a slice; 70 were spent.
    expect(paid).toEqual([100, 270]);
  });

  it("is waited for, with a line to keep the connection open, and nothing is refused", async () => {
    let spent = true;
    const { run, calls, works } = batch(3, { pay: () => (spent ? 0.03 : 0), pause_ms: 10 });
    const lines = run.lines();
    expect(Buffer.from((await lines.next()).value ?? []).toString()).toBe('{"kind":"pause"}\n');
    expect(calls).toHaveLength(0);
    spent = false;
    const texts = rest(lines);
    while (calls.length === 0) await turn();
    calls[0]?.done(works(3));
    expect(summaryOf(await texts)).toMatchObject({ answers: 3, left: 0 });
  });
});

describe("the end", () => {
  it("comes when the time is over: what runs is stopped, and the summary says what is left", async () => {
    const { run, calls, works } = batch(50, { longest_ms: 60 });
    const texts = rest(run.lines());
    await turn();
    calls[0]?.done(works(5));
    expect(summaryOf(await texts)).toEqual({
      items: 50,
      answers: 5,
      problems: 0,
      left: 45,
      cost: 50,
      ended_by: "time",
    });
  });

  it("comes when the service stops, after what is under way", async () => {
    let stops = false;
    const { run, calls, works } = batch(200, { isStopping: () => stops });
    const texts = rest(run.lines());
    await turn();
    stops = true;
    for (const { done, ids } of calls) done(works(ids.length));
    expect(summaryOf(await texts)).toMatchObject({ answers: 64, left: 136, ended_by: "stopping" });
    expect(calls).toHaveLength(2);
  });
});

describe("what goes wrong on a thread", () => {
  it("is told of one scene, and the others are tried again", async () => {
    const { run, calls, works, failures } = batch(3);
    const texts = rest(run.lines());
    await turn();
    calls[0]?.failed(new ThreadDied("out of memory"));
    await turn();
    expect(calls[1]?.ids).toEqual(["1", "2"]);
    calls[1]?.done(works(2));
    const [line = "", ...others] = await texts;
    expect(JSON.parse(line)).toMatchObject({
      kind: "problem",
      id: "0",
      problem: { status: 503, request_id: "r" },
    });
    expect(summaryOf(others)).toMatchObject({ answers: 2, problems: 1, left: 0 });
    expect(failures).toEqual([]);
  });

  it("is logged where the program is to blame", async () => {
    const { run, calls, failures } = batch(1);
    const texts = rest(run.lines());
    await turn();
    calls[0]?.done({ status: "failed", message: "a bug" });
    expect(JSON.parse((await texts)[0] ?? "")).toMatchObject({ problem: { code: "internal_error" } });
    expect(failures.join()).toContain("a bug");
  });

  it("waits where the threads have too much to do", async () => {
    const { run, calls, works } = batch(1);
    const texts = rest(run.lines());
    await turn();
    calls[0]?.failed(new Crowded("all", 1));
    while (calls.length < 2) await turn();
    calls[1]?.done(works(1));
    expect(summaryOf(await texts)).toMatchObject({ answers: 1, left: 0 });
  });
});

import { type BatchPlan, type BatchScene, sceneAt } from "@sunfathom/answers";
import type { batchEnds, Language } from "@sunfathom/contract";
import { Abandoned, Crowded, ThreadDied } from "../../compute/pool.js";
import type { Outcome, Task } from "../../compute/tasks.js";
import { refusal } from "../../http/sent/refusals.js";
import { tongueOf } from "../../tongues.js";
import type { SliceDone } from "./slice.js";
import { problemLine } from "./work.js";

/** What a thread is given at once, in units of cost: some twenty milliseconds, so that nobody waits longer for his turn. */
const sliceCost = 100;
/** Scenes of one slice, and what they may weigh on their way to a thread, bytes. */
const sliceScenes = 32;
const sliceBytes = 256 * 1024;
/** How long to wait where the threads have too much waiting, ms. */
const crowded_ms = 500;

/** Who works, who pays, and for how long. */
export interface Means {
  /** Slices at a time. */
  width: number;
  /** @returns in how many seconds to try again; 0 where it was paid */
  pay: (cost: number) => number;
  run: (task: Task, cost: number, abandon: (stop: () => void) => void) => Promise<Outcome>;
  /** Whether the service is about to stop. */
  isStopping: () => boolean;
  /** A failure of the program. */
  failed: (message: string) => void;
  longest_ms: number;
  pause_ms: number;
}

export interface Asked {
  plan: BatchPlan;
  language: Language;
  /** The query that asks for some fields of each answer. */
  query: string;
  requestId: string;
}

/** Scenes that nobody works on yet. */
interface Range {
  from: number;
  to: number;
  /** What the first of them costs, where that is known to be more than a slice. */
  cost: number;
}

/**
 * A batch under way. Scenes go to the threads in slices, each once its cost has been paid from the caller's budget; lines
 * come as slices are done. While nobody takes the lines no slice is begun, so that what waits for a slow reader is bounded by the
 * slices under way.
 */
export class BatchRun {
  readonly #ranges: Range[];
  readonly #underWay = new Set<Promise<void>>();
  readonly #stops = new Set<() => void>();
  readonly #ready: Uint8Array[] = [];
  readonly #began_ms = performance.now();
  readonly #done = { answers: 0, problems: 0, cost: 0 };
  #credit = 0;
  #retry_ms = 0;
  #hasLeft = false;
  /** Ends a wait. */
  #wake: () => void = () => {};
  #endedBy: (typeof batchEnds)[number] | undefined;

  constructor(
    private readonly asked: Asked,
    private readonly means: Means,
  ) {
    this.#ranges = [{ from: 0, to: asked.plan.size, cost: sliceCost }];
  }

  /** What is held for the reader, bytes. */
  get heldBytes(): number {
    return this.#ready.reduce((sum, { length }) => sum + length, 0);
  }

  /** Nobody waits for the lines any more: what runs is stopped, and what waits dropped. */
  leave(): void {
    this.#hasLeft = true;
    this.#stopAll();
    this.#wake();
  }

  /** All lines, the summary last. */
  async *lines(): AsyncGenerator<Uint8Array, void> {
    let told_ms = performance.now();
    for (;;) {
      this.#lookAtTheEnd();
      const begun_ms = this.#begin();
      const isOver = this.#ranges.length === 0 || this.#endedBy !== undefined;
      if (this.#hasLeft || (isOver && this.#underWay.size === 0 && this.#ready.length === 0)) break;
      if (this.#ready.length === 0) {
        const now_ms = performance.now();
        const untilEnd_ms = this.#began_ms + this.means.longest_ms - now_ms;
        await this.#something(Math.min(begun_ms, told_ms + this.means.pause_ms - now_ms, untilEnd_ms));
      }
      for (let line = this.#ready.shift(); line !== undefined; line = this.#ready.shift()) {
        yield line;
        told_ms = performance.now();
      }
      if (performance.now() - told_ms >= this.means.pause_ms && !this.#hasLeft) {
        yield Buffer.from('{"kind":"pause"}\n');
        told_ms = performance.now();
      }
    }
    if (!this.#hasLeft) yield this.#summary();
  }

  #summary(): Uint8Array {
    const { answers, problems, cost } = this.#done;
    const items = this.asked.plan.size;
    const left = items - answers - problems;
    const summary = { items, answers, problems, left, cost: Math.round(cost) };
    const whole = left > 0 && this.#endedBy !== undefined ? { ...summary, ended_by: this.#endedBy } : summary;
    return Buffer.from(`${JSON.stringify({ kind: "summary", summary: whole })}\n`);
  }

  #lookAtTheEnd(): void {
    if (this.#endedBy !== undefined) return;
    if (performance.now() - this.#began_ms >= this.means.longest_ms) {
      this.#endedBy = "time";
      this.#stopAll();
    } else if (this.means.isStopping()) this.#endedBy = "stopping";
  }

  /** Begins as many slices as may run. @returns how long until another may be begun, ms: no matter where that hangs on others */
  #begin(): number {
    while (this.#underWay.size < this.means.width && this.#endedBy === undefined && !this.#hasLeft) {
      const now_ms = performance.now();
      if (this.#retry_ms > now_ms) return this.#retry_ms - now_ms;
      const range = this.#ranges.shift();
      if (range === undefined) break;
      const missing = range.cost - this.#credit;
      const wait_s = missing > 0 ? this.means.pay(missing) : 0;
      if (wait_s > 0) {
        this.#ranges.unshift(range);
        this.#retry_ms = now_ms + wait_s * 1000;
        continue;
      }
      this.#credit -= missing > 0 ? this.#credit : range.cost;
      this.#work(range);
    }
    return Number.POSITIVE_INFINITY;
  }

  /** Has the first scenes of a range worked on. What is left of it comes next. */
  #work({ from, to, cost: allowance }: Range): void {
    const scenes = this.#scenes(from, to);
    const next = from + scenes.length;
    if (next < to) this.#ranges.unshift({ from: next, to, cost: sliceCost });
    let stop: () => void = () => {};
    const { language, query, requestId } = this.asked;
    const task: Task = { kind: "batch", slice: { scenes, language, query, requestId, allowance } };
    const abandon = (given: () => void) => {
      stop = given;
      this.#stops.add(stop);
    };
    const work = this.means
      .run(task, allowance, abandon)
      .then((outcome) => {
        if (outcome.status === "failed") throw new Error(outcome.message);
        if (outcome.status !== "batch") throw new Error(`A slice became ${outcome.status}.`);
        this.#took(outcome, { from, to: next, cost: allowance });
      })
      .catch((error: unknown) => this.#failed(error, scenes, { from, to: next, cost: allowance }))
      .finally(() => {
        this.#stops.delete(stop);
        this.#underWay.delete(work);
      });
    this.#underWay.add(work);
  }

  #scenes(from: number, to: number): BatchScene[] {
    const scenes: BatchScene[] = [];
    let bytes = 0;
    for (let index = from; index < Math.min(to, from + sliceScenes) && bytes < sliceBytes; index += 1) {
      const scene = sceneAt(this.asked.plan, index);
      scenes.push(scene);
      bytes += scene.scene.length;
    }
    return scenes;
  }

  #took({ bytes, answers, problems, cost, next, failures }: SliceDone, range: Range): void {
    if (bytes.length > 0) this.#ready.push(bytes);
    this.#done.answers += answers;
    this.#done.problems += problems;
    this.#done.cost += cost;
    this.#credit += Math.max(0, range.cost - cost);
    for (const failure of failures) this.means.failed(failure);
    const from = range.from + answers + problems;
    if (from < range.to) this.#ranges.unshift({ from, to: range.to, cost: Math.max(sliceCost, next ?? 0) });
  }

  #failed(error: unknown, scenes: readonly BatchScene[], range: Range): void {
    const [first] = scenes;
    if (error instanceof Abandoned || first === undefined) return;
    if (error instanceof Crowded) {
      this.#credit += range.cost;
      this.#ranges.unshift(range);
      this.#retry_ms = performance.now() + crowded_ms;
      return;
    }
    // It may have been any of them: the first is told so, and the others are tried again.
    const because = error instanceof ThreadDied ? "thread_died" : "internal";
    if (because === "internal")
      this.means.failed(error instanceof Error ? (error.stack ?? "") : String(error));
    const problem = refusal({ because }, tongueOf(this.asked.language).problems);
    this.#ready.push(Buffer.concat(problemLine(first, problem, this.asked.requestId).pieces));
    this.#done.problems += 1;
    this.#done.cost += range.cost;
    if (range.from + 1 < range.to)
      this.#ranges.unshift({ from: range.from + 1, to: range.to, cost: sliceCost });
  }

  #stopAll(): void {
    for (const stop of [...this.#stops]) stop();
  }

  /** Resolves once a slice is done, after so long, or where nobody waits any more. */
  async #something(most_ms: number): Promise<void> {
    let timer: NodeJS.Timeout | undefined;
    const time = new Promise<void>((resolve) => {
      this.#wake = resolve;
      if (most_ms < Number.POSITIVE_INFINITY) timer = setTimeout(resolve, Math.max(1, most_ms));
    });
    await Promise.race([...this.#underWay, time]);
    clearTimeout(timer);
  }
}

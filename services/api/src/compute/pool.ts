import { Piscina } from "piscina";
import { FairQueue, type QueueLimits } from "./fair-queue.js";
import type { Done, Loaded, Order, Outcome, Shared, Task } from "./tasks.js";

/** Threads and what may wait for them. */
export interface PoolLimits extends QueueLimits {
  threads: number;
  niceness: number;
}

/** Nobody waits for the answer any more. */
export class Abandoned extends Error {
  /** @param checkpoints how far the work had come, in looks at its flag */
  constructor(readonly checkpoints = 0) {
    super("nobody waits any more");
  }
}

/** There is no room for a task, for about so many seconds. */
export class Crowded extends Error {
  constructor(
    readonly full: "client" | "all",
    readonly wait_s: number,
  ) {
    super(`no room (${full})`);
  }
}

/** The thread that worked on a task has died. */
export class ThreadDied extends Error {}

interface Entry {
  client: string;
  task: Task;
  cost: number;
  queued_ms: number;
  /** While it runs. */
  slot: number | undefined;
  isAbandoned: boolean;
  resolve: (outcome: Outcome) => void;
  reject: (error: Error) => void;
}

/** What the pool tells of itself. */
export interface PoolWatcher {
  waited: (wait_s: number) => void;
  died: (error: Error) => void;
}

/** A thread needs some 40 MB; one that needs this much is in a loop that the program should not have. */
const heap_MB = 192;
/** What a thread takes to load at the most, where the machine has much else to do. */
const longestLoad_ms = 10_000;
/** What a unit of cost takes before any has been measured, ms. */
const firstGuess_ms = 0.2;

/**
 * The threads that heavy work is done on. Started with the first task, or by `warm`: most of the time there are none in
 * tests, and the start of the service does not wait for them.
 * @see https://github.com/piscinajs/piscina
 */
export class ComputePool {
  readonly #queue: FairQueue<Entry>;
  readonly #flags: Int32Array;
  readonly #freeSlots: number[];
  readonly #heaps = new Map<number, number>();
  readonly #watchers = new Set<PoolWatcher>();
  /** Ids of the threads that have loaded what they run, as they say themselves. */
  readonly #loaded = new Set<number>();
  #piscina: Piscina | undefined;
  #msPerUnit = firstGuess_ms;
  #cost = 0;

  /** @param file what each thread runs */
  constructor(
    private readonly limits: PoolLimits,
    private readonly file = workerFile(import.meta.url),
  ) {
    this.#queue = new FairQueue(limits);
    this.#flags = new Int32Array(new SharedArrayBuffer(limits.threads * Int32Array.BYTES_PER_ELEMENT));
    this.#freeSlots = Array.from({ length: limits.threads }, (_, slot) => slot);
  }

  /** Tasks that wait for a thread. */
  get waiting(): number {
    return this.#queue.waiting;
  }

  /** Tasks of one client that run at a time. */
  get width(): number {
    return this.limits.runningPerClient;
  }

  get running(): number {
    return this.limits.threads - this.#freeSlots.length;
  }

  /** Until what waits and runs has been worked out by the threads of one client, s. */
  get wait_s(): number {
    return Math.max(1, Math.ceil((this.#cost * this.#msPerUnit) / this.limits.runningPerClient / 1000));
  }

  /** What the heaps of the threads held after their last tasks, bytes. */
  get heapBytes(): number {
    const alive = new Set(this.#piscina?.threads.map((thread) => thread.threadId));
    return [...this.#heaps].reduce((sum, [thread, bytes]) => sum + (alive.has(thread) ? bytes : 0), 0);
  }

  /** Tells a watcher what happens from here on. @returns what ends that */
  watch(watcher: PoolWatcher): () => void {
    this.#watchers.add(watcher);
    return () => this.#watchers.delete(watcher);
  }

  /** Starts the threads. */
  warm(): void {
    this.#started();
  }

  /**
   * Works out a task as soon as its client's turn comes.
   * @param abandon calls what it is given once nobody waits for the answer any more
   * @throws Crowded, Abandoned or ThreadDied
   */
  async run(
    task: Task,
    { client, cost, abandon }: { client: string; cost: number; abandon: (stop: () => void) => void },
  ): Promise<Outcome> {
    const full = this.#queue.fullFor(client);
    if (full !== undefined) throw new Crowded(full, this.wait_s);
    return new Promise((resolve, reject) => {
      const entry: Entry = {
        client,
        task,
        cost,
        queued_ms: performance.now(),
        slot: undefined,
        isAbandoned: false,
        resolve,
        reject,
      };
      abandon(() => this.#abandon(entry));
      // Whoever has left before it came so far needs no turn.
      if (entry.isAbandoned) {
        reject(new Abandoned());
        return;
      }
      this.#cost += cost;
      this.#queue.add(client, entry);
      this.#serve();
    });
  }

  /** Ends the threads. What has not been answered by now never is. */
  async close(): Promise<void> {
    const piscina = this.#piscina;
    this.#piscina = undefined;
    this.#flags.fill(1);
    if (piscina === undefined) return;
    // Node.js 20 ends the whole process, with SIGABRT, when a thread is ended that is linking its modules.
    const end_ms = performance.now() + longestLoad_ms;
    const isLoaded = ({ threadId }: { threadId: number }) => this.#loaded.has(threadId);
    while (!piscina.threads.every(isLoaded) && performance.now() < end_ms)
      await new Promise((resolve) => setTimeout(resolve, 10));
    await piscina.destroy();
  }

  #serve(): void {
    while (this.#freeSlots.length > 0) {
      const entry = this.#queue.next();
      if (entry === undefined) return;
      void this.#give(entry);
    }
  }

  async #give(entry: Entry): Promise<void> {
    const slot = this.#freeSlots.pop() ?? 0;
    const started_ms = performance.now();
    for (const { waited } of this.#watchers) waited((started_ms - entry.queued_ms) / 1000);
    entry.slot = slot;
    Atomics.store(this.#flags, slot, 0);
    try {
      const piscina = this.#started();
      const order: Order = { task: entry.task, slot };
      const { outcome, thread, heapBytes } = (await piscina.run(order)) as Done;
      this.#heaps.set(thread, heapBytes);
      if (outcome.status === "stopped") entry.reject(new Abandoned(outcome.checkpoints));
      else {
        // Of a slice only what was done is known to have taken the time.
        const cost = outcome.status === "batch" ? outcome.cost : entry.cost;
        if (cost > 0) this.#learn((performance.now() - started_ms) / cost);
        entry.resolve(outcome);
      }
    } catch (error) {
      const cause = error instanceof Error ? error : new Error(String(error));
      for (const { died } of this.#watchers) died(cause);
      entry.reject(new ThreadDied(cause.message));
    } finally {
      // From here on the flag is another task's.
      entry.slot = undefined;
      this.#freeSlots.push(slot);
      this.#cost -= entry.cost;
      this.#queue.ran(entry.client);
      this.#serve();
    }
  }

  #abandon(entry: Entry): void {
    if (entry.isAbandoned) return;
    entry.isAbandoned = true;
    // The thread looks at its flag wherever the model is evaluated; it is never killed, which would cost more than the task.
    if (entry.slot !== undefined) Atomics.store(this.#flags, entry.slot, 1);
    else if (this.#queue.drop(entry.client, entry)) {
      this.#cost -= entry.cost;
      entry.reject(new Abandoned());
    }
  }

  /** A moving mean over some ten tasks. */
  #learn(msPerUnit: number): void {
    this.#msPerUnit += (msPerUnit - this.#msPerUnit) / 10;
  }

  #started(): Piscina {
    this.#piscina ??= this.#start();
    return this.#piscina;
  }

  #start(): Piscina {
    const piscina = new Piscina({
      filename: this.file,
      minThreads: this.limits.threads,
      maxThreads: this.limits.threads,
      concurrentTasksPerWorker: 1,
      idleTimeout: Number.POSITIVE_INFINITY,
      recordTiming: false,
      // A thread that is ended while it is required, and not imported, ends the process with it.
      execArgv: ["--no-experimental-require-module"],
      // Threads read no settings, and no secrets.
      env: {},
      resourceLimits: { maxOldGenerationSizeMb: heap_MB },
      workerData: { flags: this.#flags, niceness: this.limits.niceness } satisfies Shared,
    });
    piscina.on("message", ({ loaded }: Loaded) => this.#loaded.add(loaded));
    // Of a thread that dies between tasks; another takes its place.
    piscina.on("error", (error) => {
      for (const { died } of this.#watchers) died(error);
    });
    return piscina;
  }
}

/** What threads run: built, also where this file is not, as in tests. */
function workerFile(here: string): string {
  return new URL(here.endsWith(".ts") ? "../../dist/compute/worker.js" : "./worker.js", here).href;
}

/** How much may wait and run. */
export interface QueueLimits {
  /** Entries of one client that run at a time. */
  runningPerClient: number;
  /** Entries of one client that wait. */
  waitingPerClient: number;
  /** Entries of all clients that wait. */
  waiting: number;
}

/** Why an entry was not taken. */
export type Full = "client" | "all";

interface Line<Entry> {
  waiting: Entry[];
  running: number;
}

/**
 * A line of waiting entries for each client, served in turn: whoever asks for much waits for himself, and not others for
 * him. Only knows who waits and who is served.
 */
export class FairQueue<Entry> {
  /** In the order in which clients are served next. */
  readonly #lines = new Map<string, Line<Entry>>();
  #waiting = 0;

  constructor(private readonly limits: QueueLimits) {}

  /** Entries that wait. */
  get waiting(): number {
    return this.#waiting;
  }

  /** Whether another entry of a client would be taken. */
  fullFor(client: string): Full | undefined {
    const line = this.#lines.get(client);
    const { waitingPerClient, waiting, runningPerClient } = this.limits;
    if (line !== undefined && line.waiting.length + line.running >= waitingPerClient + runningPerClient)
      return "client";
    return this.#waiting >= waiting ? "all" : undefined;
  }

  add(client: string, entry: Entry): void {
    const known = this.#lines.get(client);
    const line = known ?? { waiting: [], running: 0 };
    if (known === undefined) this.#lines.set(client, line);
    line.waiting.push(entry);
    this.#waiting += 1;
  }

  /** The entry that is served next, which runs from now on; undefined where none may. */
  next(): Entry | undefined {
    for (const [client, line] of this.#lines) {
      if (line.running >= this.limits.runningPerClient) continue;
      const entry = line.waiting.shift();
      if (entry === undefined) continue;
      this.#waiting -= 1;
      line.running += 1;
      this.#lines.delete(client);
      this.#lines.set(client, line);
      return entry;
    }
    return undefined;
  }

  /** An entry of the client has run. */
  ran(client: string): void {
    const line = this.#lines.get(client);
    if (line === undefined) return;
    line.running -= 1;
    this.#forgetIdle(client, line);
  }

  /** Takes an entry out that waits. @returns whether it did */
  drop(client: string, entry: Entry): boolean {
    const line = this.#lines.get(client);
    const at = line?.waiting.indexOf(entry) ?? -1;
    if (line === undefined || at === -1) return false;
    line.waiting.splice(at, 1);
    this.#waiting -= 1;
    this.#forgetIdle(client, line);
    return true;
  }

  #forgetIdle(client: string, { running, waiting }: Line<Entry>): void {
    if (running === 0 && waiting.length === 0) this.#lines.delete(client);
  }
}

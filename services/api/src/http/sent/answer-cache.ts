import { LRUCache } from "lru-cache";

/** What an entry takes besides its bytes: tag, list nodes, buffer. Measured at about 400 bytes; taken large. */
const overheadBytes = 512;

/** Whether an answer was there, or had to be worked out. */
export type Lookup = "hit" | "miss";

/**
 * The bytes of answers given lately, by their entity tag, which stands for all that an answer depends on: the oldest go
 * first. Bounded in bytes, so that no mix of requests grows the process.
 * @see https://github.com/isaacs/node-lru-cache
 */
export class AnswerCache {
  readonly #kept: LRUCache<string, Buffer> | undefined;
  readonly #watchers: ((lookup: Lookup) => void)[] = [];

  /** @param maxBytes 0 for no cache */
  constructor(maxBytes: number) {
    if (maxBytes === 0) return;
    this.#kept = new LRUCache({
      maxSize: maxBytes,
      sizeCalculation: (bytes) => bytes.length + overheadBytes,
    });
  }

  /** What is kept, bytes. */
  get bytes(): number {
    return this.#kept?.calculatedSize ?? 0;
  }

  /** Has `watcher` told of every lookup. */
  watch(watcher: (lookup: Lookup) => void): void {
    this.#watchers.push(watcher);
  }

  get(etag: string): Buffer | undefined {
    const found = this.#kept?.get(etag);
    if (this.#kept !== undefined)
      for (const tell of this.#watchers) tell(found === undefined ? "miss" : "hit");
    return found;
  }

  /** Keeps a copy: what an answer was written into is shared with others, and would be kept with it. */
  keep(etag: string, bytes: Uint8Array): void {
    this.#kept?.set(etag, Buffer.from(bytes));
  }
}

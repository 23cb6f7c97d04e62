/** How long work may keep the thread in one turn of the event loop, ms: others that have come meanwhile wait no longer. */
const slice_ms = 10;

/**
 * Lets clients have the thread that answers in turn. What one client sends on its connections in one packet is read in one
 * turn of the event loop: thousands of requests, and seconds of light work, before anybody else is read. Here work is done at
 * once while a turn has time left; what comes beyond waits in a line for each client, one of each is served after the
 * other, and what others have sent meanwhile is read in between.
 */
export class Turns {
  /** In the order in which clients are served next. */
  readonly #lines = new Map<string, (() => void)[]>();
  #spent_ms = 0;
  #isTurning = false;

  /** Works that wait. */
  get waiting(): number {
    return [...this.#lines.values()].reduce((sum, line) => sum + line.length, 0);
  }

  /** Does a client's work, at once or in its turn. */
  do(client: string, work: () => void): void {
    if (this.#lines.size === 0 && this.#spent_ms < slice_ms) {
      this.#spend(work);
      return;
    }
    const line = this.#lines.get(client);
    if (line === undefined) this.#lines.set(client, [work]);
    else line.push(work);
  }

  #spend(work: () => void): void {
    const begun_ms = performance.now();
    if (!this.#isTurning) {
      this.#isTurning = true;
      setImmediate(() => this.#turn());
    }
    try {
      work();
    } finally {
      this.#spent_ms += performance.now() - begun_ms;
    }
  }

  /** A new turn: everybody who has sent something has been read. */
  #turn(): void {
    this.#spent_ms = 0;
    this.#isTurning = false;
    for (const [client, line] of this.#lines) {
      if (this.#spent_ms >= slice_ms) break;
      // One of its works, and then the others' turn: a map goes on to what is put at its end.
      const work = line.shift();
      this.#lines.delete(client);
      if (line.length > 0) this.#lines.set(client, line);
      if (work !== undefined) this.#spend(work);
    }
  }
}

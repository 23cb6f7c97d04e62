/** How long work may keep the thread in one turn of the event loop, ms: others that have come meanwhile wait no longer. */
const slice_ms = 5;
/** In so many turns after one another may what waits go on waiting because somebody connects. */
const mostPassed = 16;

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
  #hasCome = false;
  #passed = 0;
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

  /**
   * Somebody has connected. Node.js takes one connection in a turn of the event loop, so that whoever stands behind the
   * two hundred connections of another waits for as many turns: those are kept short.
   */
  come(): void {
    this.#hasCome = true;
  }

  #nextTurn(): void {
    if (this.#isTurning) return;
    this.#isTurning = true;
    setImmediate(() => this.#turn());
  }

  #spend(work: () => void): void {
    const begun_ms = performance.now();
    this.#nextTurn();
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
    const passes = this.#hasCome && this.#passed < mostPassed && this.#lines.size > 0;
    this.#hasCome = false;
    this.#passed = passes ? this.#passed + 1 : 0;
    if (passes) {
      this.#nextTurn();
      return;
    }
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

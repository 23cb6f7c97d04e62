/** How long a turn of the event loop may take for work, ms: others that have come meanwhile wait no longer. */
const slice_ms = 5;
/** In so many turns after one another may what waits go on waiting because somebody connects. */
const mostPassed = 16;

/**
 * Lets clients have the thread that answers in turn. What one client sends on its connections in one packet is read in one
 * turn of the event loop: thousands of requests, and seconds of light work, before anybody else is read. Here work is done at
 * once while a turn has time left; what comes beyond waits in a line for each client, one of each is served after the
 * other, and what others have sent meanwhile is read in between.
 *
 * A turn's time is all that has passed since it began, with what work sets off behind it: to write an answer, to begin with
 * the next of its connection and to clear up take four times as long as to answer a light request.
 */
export class Turns {
  /** In the order in which clients are served next. */
  readonly #lines = new Map<string, (() => void)[]>();
  #began_ms = 0;
  #hasCome = false;
  #passed = 0;
  #isTurning = false;

  /** @param now_ms a clock that only goes forward */
  constructor(private readonly now_ms = () => performance.now()) {}

  /** Works that wait. */
  get waiting(): number {
    return [...this.#lines.values()].reduce((sum, line) => sum + line.length, 0);
  }

  /** Does a client's work, at once or in its turn. */
  do(client: string, work: () => void): void {
    if (!this.#isTurning) this.#begin();
    if (this.#lines.size === 0 && this.#hasTime()) {
      work();
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

  #hasTime(): boolean {
    return this.now_ms() - this.#began_ms < slice_ms;
  }

  #begin(): void {
    this.#began_ms = this.now_ms();
    this.#isTurning = true;
    setImmediate(() => this.#turn());
  }

  /** A new turn: everybody who has sent something has been read. */
  #turn(): void {
    this.#isTurning = false;
    const passes = this.#hasCome && this.#passed < mostPassed;
    this.#hasCome = false;
    if (this.#lines.size === 0) return;
    this.#begin();
    this.#passed = passes ? this.#passed + 1 : 0;
    if (!passes) this.#serve();
  }

  /** One work of the next client, then what it has set off, then the others' turn. */
  #serve(): void {
    const [next] = this.#lines;
    if (next === undefined || !this.#hasTime()) return;
    const [client, line] = next;
    const work = line.shift();
    this.#lines.delete(client);
    if (line.length > 0) this.#lines.set(client, line);
    process.nextTick(() => this.#serve());
    work?.();
  }
}

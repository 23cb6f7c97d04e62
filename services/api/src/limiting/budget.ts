/** How much a client may ask for: so many units of cost in so many seconds. */
export interface Quota {
  cost: number;
  window_s: number;
}

/** What became of an attempt to take from a budget. */
export interface Taken {
  isTaken: boolean;
  /** Whole units that are left. */
  left: number;
  /** Seconds until the budget is whole again. */
  whole_s: number;
  /** Seconds until what was refused can be taken; 0 where it was taken. */
  wait_s: number;
}

/** Clients remembered at most: each is known by its address and one number. */
const mostClients = 16_384;
/** Of them, so many make room at once where there is none. */
const atOnce = mostClients / 16;

/**
 * A budget for each client that fills up steadily: a window that starts anew at once would let two budgets be spent around
 * its edge. Of a client it is known when its budget is whole again; whose is needs no remembering. Where there are too many
 * others, those are forgotten who have spent the least: they are given the least, and whoever has spent all stays known, however
 * many come. Time is counted from the start of the process, as a clock that is set back would lock clients out.
 */
export class Budget {
  readonly #whole_ms = new Map<string, number>();
  readonly #costPer_ms: number;
  #read_ms: number;
  #now_ms = 0;

  /** @param readClock a clock that only goes forward, ms */
  constructor(
    readonly quota: Quota,
    private readonly readClock: () => number = () => performance.now(),
  ) {
    this.#costPer_ms = quota.cost / quota.window_s / 1000;
    this.#read_ms = readClock();
  }

  /** Clients that are remembered. */
  get remembered(): number {
    return this.#whole_ms.size;
  }

  /** Takes `cost` from a client's budget, or nothing where there is less. What exceeds a whole budget takes all of it. */
  take(client: string, cost: number): Taken {
    const now_ms = this.#advance();
    const { cost: whole } = this.quota;
    const short = Math.max(0, (this.#whole_ms.get(client) ?? now_ms) - now_ms) * this.#costPer_ms;
    // Below 0 where more was owed than there was.
    const before = whole - short;
    const wanted = Math.min(cost, whole);
    // Less than a millionth of a unit is how far additions may be off.
    const isTaken = before > wanted - 1e-6;
    const left = isTaken ? Math.max(0, before - wanted) : before;
    if (isTaken && wanted > 0) this.#remember(client, now_ms + (whole - left) / this.#costPer_ms);
    return {
      isTaken,
      left: Math.max(0, Math.floor(left + 1e-6)),
      whole_s: this.#secondsFor(whole - left),
      wait_s: isTaken ? 0 : Math.max(1, this.#secondsFor(wanted - left)),
    };
  }

  /** Takes what has been spent already, though there be less: until that is made up for there is nothing. */
  owe(client: string, cost: number): void {
    const now_ms = this.#advance();
    const whole_ms = Math.max(now_ms, this.#whole_ms.get(client) ?? now_ms);
    if (cost > 0) this.#remember(client, whole_ms + cost / this.#costPer_ms);
  }

  #remember(client: string, whole_ms: number): void {
    if (this.#whole_ms.size >= mostClients && !this.#whole_ms.has(client)) this.#makeRoom();
    this.#whole_ms.set(client, whole_ms);
  }

  #makeRoom(): void {
    const times = Float64Array.from(this.#whole_ms.values()).sort();
    const last_ms = Math.max(this.#now_ms, times[atOnce - 1] ?? 0);
    let gone = 0;
    for (const [client, whole_ms] of this.#whole_ms) {
      // Of as many as have spent the same, no more than have to.
      if (whole_ms > last_ms || (whole_ms > this.#now_ms && gone >= atOnce)) continue;
      this.#whole_ms.delete(client);
      gone += 1;
    }
  }

  /** What the clock says, as far as it goes forward. */
  #advance(): number {
    const read_ms = this.readClock();
    this.#now_ms += Math.max(0, read_ms - this.#read_ms);
    this.#read_ms = read_ms;
    return this.#now_ms;
  }

  #secondsFor(cost: number): number {
    return Math.max(0, Math.ceil(cost / this.#costPer_ms / 1000 - 1e-6));
  }
}

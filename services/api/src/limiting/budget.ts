import { LRUCache } from "lru-cache";

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

interface Account {
  left: number;
  at_ms: number;
}

/** Clients remembered at most; the one unseen for longest is forgotten first, and starts again with a whole budget. */
const mostClients = 16_384;

/**
 * A budget for each client that fills up steadily: a window that starts anew at once would let two budgets be spent around
 * its edge. Time is counted from the start of the process, as a clock that is set back would lock clients out.
 */
export class Budget {
  readonly #accounts = new LRUCache<string, Account>({ max: mostClients });
  readonly #costPer_ms: number;

  /** @param now_ms a clock that only goes forward */
  constructor(
    readonly quota: Quota,
    private readonly now_ms: () => number = () => performance.now(),
  ) {
    this.#costPer_ms = quota.cost / quota.window_s / 1000;
  }

  /** Takes `cost` from a client's budget, or nothing where there is less. What exceeds a whole budget takes all of it. */
  take(client: string, cost: number): Taken {
    const account = this.#accountOf(client);
    const wanted = Math.min(cost, this.quota.cost);
    // Less than a millionth of a unit is how far additions may be off.
    const isTaken = account.left > wanted - 1e-6;
    if (isTaken) account.left = Math.max(0, account.left - wanted);
    return {
      isTaken,
      left: Math.floor(account.left + 1e-6),
      whole_s: this.#secondsFor(this.quota.cost - account.left),
      wait_s: isTaken ? 0 : Math.max(1, this.#secondsFor(wanted - account.left)),
    };
  }

  #accountOf(client: string): Account {
    const now_ms = this.now_ms();
    const known = this.#accounts.get(client);
    if (known === undefined) {
      const fresh = { left: this.quota.cost, at_ms: now_ms };
      this.#accounts.set(client, fresh);
      return fresh;
    }
    const gained = Math.max(0, now_ms - known.at_ms) * this.#costPer_ms;
    known.left = Math.min(this.quota.cost, known.left + gained);
    known.at_ms = now_ms;
    return known;
  }

  #secondsFor(cost: number): number {
    return Math.max(0, Math.ceil(cost / this.#costPer_ms / 1000 - 1e-6));
  }
}

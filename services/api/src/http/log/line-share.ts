import type { FastifyBaseLogger } from "fastify";
import { Budget, type Quota } from "../../limiting/budget.js";
import { siteOf } from "../../limiting/client-key.js";

/** How long lines that are left out are counted before a line tells of them. */
const tell_ms = 1000;

/**
 * How many lines of the log each client may fill: as many requests as its budget holds where each costs the least, so
 * that a line is left out only of what is refused beyond the budget, or counts against none, as health does. A client that
 * asks for those without end would fill the disk: thousands of lines a second.
 */
export class LineShare {
  readonly #budget: Budget | undefined;
  #leftOut = 0;
  #telling: NodeJS.Timeout | undefined;

  /** @param quota whatever is asked has a line where its cost is 0 */
  constructor(
    quota: Quota,
    private readonly log: FastifyBaseLogger | undefined,
  ) {
    this.#budget = quota.cost === 0 ? undefined : new Budget(quota);
  }

  /** Whether there is room for a line of a client's; counted where there is none. */
  take(client: string): boolean {
    if (this.#budget === undefined || this.#budget.take(siteOf(client), 1).isTaken) return true;
    this.#leftOut += 1;
    this.#telling ??= setTimeout(() => this.#tell(), tell_ms).unref();
    return false;
  }

  #tell(): void {
    this.log?.warn({ lines: this.#leftOut }, "lines left out: a client asks for more than its budget");
    this.#leftOut = 0;
    this.#telling = undefined;
  }
}

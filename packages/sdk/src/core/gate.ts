import { AbortedError } from "./errors.js";
import { ResponseError } from "./response-errors.js";
import { longestWaitMs, wait } from "./retry.js";

/** Lets calls through: so many at a time, in the order in which they came, and none while the service asks to wait. */
export interface Gate {
  /**
   * Carries `ask` out once there is room for it.
   * @throws AbortedError where the signal says so before; else what `ask` throws
   */
  through<T>(ask: () => Promise<T>, signal: AbortSignal | undefined): Promise<T>;
}

/** @param most calls under way at a time */
export function gateOf(most: number): Gate {
  let underWay = 0;
  let closedUntil = 0;
  const waiting = new Set<() => void>();

  // A place is handed on, so that nobody who comes meanwhile takes it.
  const leave = () => {
    const [next] = waiting;
    if (next === undefined) underWay -= 1;
    else next();
  };

  async function enter(signal: AbortSignal | undefined): Promise<void> {
    if (underWay >= most) await turn(waiting, signal);
    else underWay += 1;
    try {
      for (let left = closedUntil - Date.now(); left > 0; left = closedUntil - Date.now()) {
        await wait(left, signal);
      }
    } catch (error) {
      leave();
      throw error;
    }
  }

  return {
    through: async (ask, signal) => {
      await enter(signal);
      try {
        return await ask();
      } catch (error) {
        closedUntil = Math.max(closedUntil, Date.now() + pauseAfter(error));
        throw error;
      } finally {
        leave();
      }
    },
  };
}

/** Waits for a place, which whoever leaves hands on. */
function turn(waiting: Set<() => void>, signal: AbortSignal | undefined): Promise<void> {
  return new Promise((resolve, reject) => {
    const settle = (then: () => void) => {
      waiting.delete(enter);
      signal?.removeEventListener("abort", abort);
      then();
    };
    const enter = () => settle(resolve);
    const abort = () => settle(() => reject(new AbortedError(signal?.reason)));
    waiting.add(enter);
    if (signal?.aborted) abort();
    else signal?.addEventListener("abort", abort, { once: true });
  });
}

/** How long the service asks everybody to wait, in milliseconds. */
function pauseAfter(error: unknown): number {
  if (!(error instanceof ResponseError) || (error.status !== 429 && error.status !== 503)) return 0;
  const asked = error.retryAfterMs ?? 0;
  return asked > longestWaitMs ? 0 : asked;
}

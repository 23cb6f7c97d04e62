import { vi } from "vitest";
import type { ClientClock } from "./client-clock.test-support.js";
import type { FaultServer } from "./fault-server.test-support.js";

/** An unusual number, so that an attempt's timer can be told from a wait. */
export const TIMEOUT_MS = 31_234;

export interface Driven {
  value?: unknown;
  error?: unknown;
  /** Waits between attempts, in milliseconds. */
  delays: number[];
}

/**
 * Carries a call to its end under fake timers over real sockets: every wait between attempts passes at once and is
 * noted, and an attempt that the server left hanging runs out of time.
 */
export async function drive(
  server: FaultServer,
  clock: ClientClock,
  start: () => Promise<unknown>,
): Promise<Driven> {
  const delays: number[] = [];
  let ended: Omit<Driven, "delays"> | undefined;
  let looked = clock.set.length;
  start().then(
    (value) => {
      ended = { value };
    },
    (error: unknown) => {
      ended = { error };
    },
  );
  while (ended === undefined) {
    await turn();
    for (; looked < clock.set.length; looked += 1) {
      const ms = clock.set[looked];
      if (ms === undefined || ms === TIMEOUT_MS) continue;
      delays.push(ms);
      await vi.advanceTimersByTimeAsync(ms);
    }
    if (server.stalled) {
      server.stalled = false;
      // What was sent of the answer is to arrive first.
      for (let turns = 0; turns < 20; turns += 1) await turn();
      await vi.advanceTimersByTimeAsync(TIMEOUT_MS);
    }
  }
  return { ...ended, delays };
}

/** Lets sockets and promises move once. */
export function turn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

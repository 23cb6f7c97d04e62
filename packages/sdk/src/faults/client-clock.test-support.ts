import { vi } from "vitest";

/**
 * Fake timers for the client alone: `fetch` of Node keeps timers of its own in the same global, and those stay real.
 */
export class ClientClock {
  /** Every timer that the client set, in milliseconds. */
  readonly set: number[] = [];
  readonly #real = { setTimeout: globalThis.setTimeout, clearTimeout: globalThis.clearTimeout };

  constructor(now: string) {
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout", "Date"], now: new Date(now) });
    const fake = { setTimeout: globalThis.setTimeout, clearTimeout: globalThis.clearTimeout };
    const foreign = new Set<unknown>();
    const real = this.#real;
    vi.stubGlobal("setTimeout", (run: () => void, ms = 0, ...values: unknown[]) => {
      if (new Error().stack?.includes("/sdk/src/core/")) {
        this.set.push(ms);
        return fake.setTimeout(run, ms);
      }
      const timer = real.setTimeout(run, ms, ...values);
      foreign.add(timer);
      return timer;
    });
    vi.stubGlobal("clearTimeout", (timer: NodeJS.Timeout) => {
      (foreign.has(timer) ? real : fake).clearTimeout(timer);
    });
  }

  /** Timers of the client that still run. */
  get running(): number {
    return vi.getTimerCount();
  }

  end(): void {
    vi.unstubAllGlobals();
    vi.useRealTimers();
  }
}

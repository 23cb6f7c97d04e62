import { vi } from "vitest";

/**
 * Resolves once `holds` no longer throws. What is awaited comes by an event; how long that takes on a busy machine says nothing, so the
 * time here is one after which it will not come any more.
 */
export const eventually = <T>(holds: () => T | Promise<T>, interval = 5): Promise<T> =>
  vi.waitFor(holds, { timeout: 60_000, interval });

import { AbortedError, ConnectionError, TimeoutError } from "./errors.js";
import type { Fetch } from "./types.js";

/** A whole answer, whatever its status. */
export interface Reply {
  status: number;
  headers: Headers;
  text: string;
  /** The body of a good answer that is a file. */
  bytes?: ArrayBuffer;
}

/** What is asked, and for how long. */
export interface Attempt {
  url: string;
  init: RequestInit;
  /** Whether a good answer is a file. */
  isFile: boolean;
  /** Until the last byte of the body is there. */
  timeoutMs: number;
  signal: AbortSignal | undefined;
}

/**
 * Asks once.
 * @throws AbortedError, TimeoutError, ConnectionError
 */
export async function attempt(
  fetch: Fetch,
  { url, init, isFile, timeoutMs, signal }: Attempt,
): Promise<Reply> {
  if (signal?.aborted) throw new AbortedError(signal.reason);
  // A controller for each attempt, tied by hand: a signal that outlives many calls must not gather listeners.
  const controller = new AbortController();
  const abort = () => controller.abort();
  let late = false;
  const timer = setTimeout(() => {
    late = true;
    abort();
  }, timeoutMs);
  signal?.addEventListener("abort", abort);
  try {
    const response = await fetch(url, { ...init, signal: controller.signal });
    const { status, headers } = response;
    if (isFile && response.ok) return { status, headers, text: "", bytes: await response.arrayBuffer() };
    return { status, headers, text: await response.text() };
  } catch (cause) {
    if (signal?.aborted) throw new AbortedError(signal.reason);
    if (late) throw new TimeoutError(timeoutMs);
    throw new ConnectionError(`The connection to ${new URL(url).host} failed.`, { cause });
  } finally {
    clearTimeout(timer);
    signal?.removeEventListener("abort", abort);
  }
}

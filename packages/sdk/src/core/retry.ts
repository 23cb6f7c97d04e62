import { AbortedError, ConnectionError, TimeoutError } from "./errors.js";
import { ResponseError } from "./response-errors.js";

const firstDelayMs = 500;
const longestDelayMs = 8_000;
/** Whoever is asked to wait longer is told so at once. */
export const longestWaitMs = 60_000;

/** Statuses that say "later" rather than "no". A 500 is none of them: a failure in the service would only be met again. */
const later = new Set([408, 429, 502, 503, 504]);

/** What has happened in a call so far. */
export interface History {
  /** Retries made. */
  retries: number;
  /** Whether one of them was for a connection that failed. */
  reconnected: boolean;
}

/**
 * How long to wait before another attempt, in milliseconds; undefined where there shall be none.
 * @param error what came of the last attempt
 */
export function delayBeforeRetry(error: unknown, { retries, reconnected }: History): number | undefined {
  // Half of the delay is left to chance, so that clients which failed together do not come back together.
  const backoff = Math.min(longestDelayMs, firstDelayMs * 2 ** retries) * (0.5 + Math.random() / 2);
  if (error instanceof ConnectionError) return reconnected ? undefined : backoff;
  if (error instanceof TimeoutError) return backoff;
  if (!(error instanceof ResponseError) || !later.has(error.status)) return undefined;
  const asked = error.retryAfterMs ?? 0;
  return asked > longestWaitMs ? undefined : Math.max(asked, backoff);
}

/**
 * `Retry-After` (RFC 9110, section 10.2.3) in milliseconds: seconds, or a date.
 * @returns undefined where it is absent or neither
 */
export function retryAfterMs(header: string | null): number | undefined {
  if (header === null) return undefined;
  if (/^\d+$/.test(header)) return Number(header) * 1000;
  const date = Date.parse(header);
  return Number.isNaN(date) ? undefined : Math.max(0, date - Date.now());
}

/** @throws AbortedError as soon as the signal says so */
export function wait(ms: number, signal: AbortSignal | undefined): Promise<void> {
  return new Promise((resolve, reject) => {
    const abort = () => {
      clearTimeout(timer);
      reject(new AbortedError(signal?.reason));
    };
    const timer = setTimeout(() => {
      signal?.removeEventListener("abort", abort);
      resolve();
    }, ms);
    if (signal?.aborted) abort();
    else signal?.addEventListener("abort", abort, { once: true });
  });
}

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
export interface Asked {
  url: string;
  init: RequestInit;
  /** Until the last byte of the body is there; of a stream, until the next piece is. */
  timeoutMs: number;
  signal: AbortSignal | undefined;
}

/** An answer that has begun. */
export interface Opened {
  response: Response;
  /** Waits for a part of it. @throws AbortedError, TimeoutError, ConnectionError */
  guard: <T>(part: () => Promise<T>) => Promise<T>;
  /** Starts the time anew. */
  rewind: () => void;
  /** Lets go of signal and timer; what has not come by then never does. */
  end: () => void;
}

/**
 * Asks once, for the head of an answer.
 * @throws AbortedError, TimeoutError, ConnectionError
 */
export async function open(fetch: Fetch, { url, init, timeoutMs, signal }: Asked): Promise<Opened> {
  if (signal?.aborted) throw new AbortedError(signal.reason);
  // A controller for each attempt, tied by hand: a signal that outlives many calls must not gather listeners.
  const controller = new AbortController();
  const abort = () => controller.abort();
  let late = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const rewind = () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      late = true;
      abort();
    }, timeoutMs);
  };
  const end = () => {
    clearTimeout(timer);
    signal?.removeEventListener("abort", abort);
    abort();
  };
  const guard = async <T>(part: () => Promise<T>): Promise<T> => {
    try {
      return await part();
    } catch (cause) {
      end();
      if (signal?.aborted) throw new AbortedError(signal.reason);
      if (late) throw new TimeoutError(timeoutMs);
      throw new ConnectionError(`The connection to ${new URL(url).host} failed.`, { cause });
    }
  };
  rewind();
  signal?.addEventListener("abort", abort);
  const response = await guard(() => fetch(url, { ...init, signal: controller.signal }));
  return { response, guard, rewind, end };
}

/**
 * Reads an answer to its end.
 * @param isFile whether a good answer is a file
 */
export async function whole({ response, guard, end }: Opened, isFile: boolean): Promise<Reply> {
  const { status, headers } = response;
  const reply =
    isFile && response.ok
      ? { status, headers, text: "", bytes: await guard(() => response.arrayBuffer()) }
      : { status, headers, text: await guard(() => response.text()) };
  end();
  return reply;
}

/**
 * What every error of this package is.
 * @example
 * if (!(error instanceof SunfathomError)) throw error; // a mistake of the program itself
 */
export class SunfathomError extends Error {
  override readonly name: string = "SunfathomError";
}

/**
 * No answer came: the name was not found, the connection was refused, or it closed before the whole answer was there.
 * @example
 * if (error instanceof ConnectionError) return offlineClient.calculations.filterChoice(scene);
 */
export class ConnectionError extends SunfathomError {
  override readonly name: string = "ConnectionError";
}

/**
 * An attempt took longer than `timeoutMs`.
 * @example
 * if (error instanceof TimeoutError) console.error(`nothing within ${error.timeoutMs} ms`);
 */
export class TimeoutError extends SunfathomError {
  override readonly name: string = "TimeoutError";
  constructor(
    /** How long the attempt was given, in milliseconds. */
    readonly timeoutMs: number,
  ) {
    super(`No whole answer came within ${timeoutMs} ms.`);
  }
}

/**
 * The caller's signal ended the call; its reason is the `cause`.
 * @example
 * if (error instanceof AbortedError) return; // the guest has left the page
 */
export class AbortedError extends SunfathomError {
  override readonly name: string = "AbortedError";
  constructor(cause: unknown) {
    super("The call was aborted.", { cause });
  }
}

/**
 * The operation needs a service: it cannot be computed offline.
 * @example
 * if (error instanceof NotOfflineError) console.error("ask again when there is a network");
 */
export class NotOfflineError extends SunfathomError {
  override readonly name: string = "NotOfflineError";
}

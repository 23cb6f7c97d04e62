import { type DestinationStream, pino } from "pino";

/** What waits to be written while the log cannot be; lines beyond it are lost rather than the memory. */
const waitingBytes = 1024 * 1024;

/**
 * Where the log goes: the error output, beside the lines on standard output that tell a person where the service is. A full
 * disk or a closed pipe costs lines, never the service; when there is room again, the log goes on.
 */
export function logDestination(): DestinationStream {
  const destination = pino.destination({ dest: 2, sync: false, minLength: 1, maxLength: waitingBytes });
  destination.on("error", ignore);
  // With the store full, no line would ever try again by itself.
  destination.on("drop", () => destination.flush(ignore));
  return destination;
}

/** Lets the process live on when nobody reads its standard output any more. */
export function outliveReaders(): void {
  process.stdout.on("error", ignore);
  process.stderr.on("error", ignore);
}

/** There is nowhere left to tell it. */
function ignore(): void {}

import { write, writeSync } from "node:fs";

/** What waits to be written while a reader is slow; lines beyond it are lost rather than the memory. */
const waitingCharacters = 1024 * 1024;
const retry_ms = 50;
/** How long a line may wait for others to be written with it: a write of its own costs as much as the answer that it tells of. */
const gather_ms = 50;
/** Beyond this they wait no longer. */
const enoughCharacters = 16 * 1024;

/**
 * A log that is written to a file descriptor beside the requests, never in their way. A full disk or a closed pipe costs
 * lines, not the service; when there is room again, the log goes on. (The writer that comes with the logger waits for
 * room at the end of the process, for ever if need be.)
 * @param fd for example 2, the error output: standard output is for the lines that tell a person where the service is
 */
export class PatientLog {
  #waiting = "";
  #writing: Buffer | undefined;
  #gathering: NodeJS.Timeout | undefined;

  constructor(private readonly fd: number) {
    process.on("exit", () => this.#writeRest());
  }

  write(line: string): void {
    if (this.#waiting.length + line.length > waitingCharacters) return;
    this.#waiting += line;
    if (this.#writing === undefined) this.#gather();
  }

  #gather(): void {
    if (this.#waiting.length >= enoughCharacters) this.#flush();
    else if (this.#waiting !== "") this.#gathering ??= setTimeout(() => this.#flush(), gather_ms).unref();
  }

  #flush(): void {
    clearTimeout(this.#gathering);
    this.#gathering = undefined;
    const chunk = Buffer.from(this.#waiting);
    this.#waiting = "";
    this.#send(chunk);
  }

  #send(chunk: Buffer): void {
    this.#writing = chunk;
    write(this.fd, chunk, (error, written) => {
      if (error?.code === "EAGAIN") {
        setTimeout(() => this.#send(chunk), retry_ms).unref();
        return;
      }
      const rest = error === null ? chunk.subarray(written) : undefined;
      if (rest !== undefined && rest.length > 0) {
        this.#send(rest);
        return;
      }
      this.#writing = undefined;
      this.#gather();
    });
  }

  /** Once, at the end: there is no time left to wait for anything. */
  #writeRest(): void {
    try {
      if (this.#writing === undefined) writeSync(this.fd, this.#waiting);
      else writeSync(this.fd, Buffer.concat([this.#writing, Buffer.from(this.#waiting)]));
    } catch {
      // There is nowhere left to tell it.
    }
  }
}

/** Lets the process live on when nobody reads its output any more, or there is no room for it. */
export function outliveReaders(): void {
  for (const stream of [process.stdout, process.stderr]) stream.on("error", () => {});
}

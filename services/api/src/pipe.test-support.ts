import { execFileSync } from "node:child_process";
import { closeSync, constants, mkdtempSync, openSync, readSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

/** A named pipe whose ends do not wait: a full one refuses (EAGAIN), one without a reader breaks (EPIPE), as POSIX has it. */
export class Pipe {
  readonly #folder = mkdtempSync(join(tmpdir(), "log-"));
  readonly #name = join(this.#folder, "pipe");
  #reader: number | undefined;
  readonly fd: number;

  constructor() {
    execFileSync("mkfifo", [this.#name]);
    this.listen();
    this.fd = openSync(this.#name, constants.O_WRONLY | constants.O_NONBLOCK);
  }

  listen() {
    this.#reader = openSync(this.#name, constants.O_RDONLY | constants.O_NONBLOCK);
  }

  hangUp() {
    if (this.#reader !== undefined) closeSync(this.#reader);
    this.#reader = undefined;
  }

  /** Fills it from another hand, as a process does that shares it. */
  fill() {
    const filler = Buffer.alloc(4096, "-");
    try {
      for (;;) writeSync(this.fd, filler);
    } catch {
      // Full.
    }
  }

  /** What is in it now, the filling left out. */
  read(): string {
    const chunk = Buffer.alloc(1 << 20);
    const parts: Buffer[] = [];
    try {
      for (;;) {
        const length = readSync(this.#reader ?? -1, chunk);
        if (length === 0) break;
        parts.push(Buffer.from(chunk.subarray(0, length)));
      }
    } catch {
      // Empty for now.
    }
    return Buffer.concat(parts).toString().replaceAll("-", "");
  }

  /** Reads on until `enough`, or for five seconds. */
  async readUntil(enough: (text: string) => boolean): Promise<string> {
    let text = "";
    for (const start = performance.now(); !enough(text) && performance.now() - start < 5000; ) {
      text += this.read();
      await pause(5);
    }
    return text;
  }

  /** Reads on until nothing has come for longer than a log waits. */
  async readUntilSilent(): Promise<string> {
    let text = "";
    for (let last = performance.now(); performance.now() - last < 250; ) {
      const more = this.read();
      if (more !== "") last = performance.now();
      text += more;
      await pause(5);
    }
    return text;
  }

  remove() {
    this.hangUp();
    closeSync(this.fd);
    rmSync(this.#folder, { recursive: true });
  }
}

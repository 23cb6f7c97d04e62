import { closeSync, openSync, readFileSync, rmSync } from "node:fs";
import { mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { outliveReaders, PatientLog } from "./output.js";
import { Pipe } from "./pipe.test-support.js";

const pause = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms));

const ends: NodeJS.ExitListener[] = [];

/** A log, and what it does as the process ends. */
function logAndItsEnd(fd: number) {
  const before = process.listeners("exit");
  const log = new PatientLog(fd);
  const added = process.listeners("exit").filter((listener) => !before.includes(listener));
  ends.push(...added);
  const end = () => {
    for (const listener of added) listener(0);
  };
  return { log, end };
}
const logTo = (fd: number) => logAndItsEnd(fd).log;

afterEach(() => {
  for (const listener of ends.splice(0)) process.off("exit", listener);
});

describe("the log's writer", () => {
  it("writes every line, in order", async () => {
    const folder = await mkdtemp(join(tmpdir(), "log-"));
    const file = join(folder, "log");
    const fd = openSync(file, "a");
    const log = logTo(fd);
    const lines = Array.from({ length: 5000 }, (_, index) => `${index} æøå ${"x".repeat(index % 90)}\n`);
    for (const line of lines) log.write(line);
    await pause(200);
    expect(readFileSync(file, "utf8")).toBe(lines.join(""));
    closeSync(fd);
    rmSync(folder, { recursive: true });
  });

  it("loses lines where it cannot write, and takes no more memory for them", async () => {
    const fd = openSync("/dev/full", "w");
    const log = logTo(fd);
    const before = process.memoryUsage().heapUsed;
    for (let round = 0; round < 200; round += 1) {
      for (let line = 0; line < 100; line += 1) log.write(`${"y".repeat(1000)}\n`);
      await pause(0);
    }
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(60_000_000);
    closeSync(fd);
  });
});

describe("the log's writer at a pipe", () => {
  let pipe: Pipe;
  beforeEach(() => {
    pipe = new Pipe();
  });
  afterEach(async () => {
    // A log that still has something to write must not meet the number of its pipe again in the next one.
    await pipe.readUntilSilent();
    pipe.remove();
  });
  const numbered = (count: number) => Array.from({ length: count }, (_, n) => `${n} ${"z".repeat(500)}\n`);

  it("waits for a slow reader, and goes on in the middle of a line where the pipe took a part", async () => {
    const lines = numbered(600);
    const log = logTo(pipe.fd);
    for (const line of lines) log.write(line);
    // Far more than a pipe holds (64 KiB): what is first read is a part.
    await pause(150);
    const first = pipe.read();
    expect(first.length).toBeLessThan(lines.join("").length / 2);
    const text =
      first + (await pipe.readUntil((read) => first.length + read.length >= lines.join("").length));
    expect(text).toBe(lines.join(""));
  });

  it("keeps about a mebibyte for a reader who never comes, whole lines, the oldest, and goes on once they are read", async () => {
    const lines = numbered(6000);
    pipe.fill();
    const log = logTo(pipe.fd);
    for (const line of lines) log.write(line);
    await pause(100);
    const kept = await pipe.readUntilSilent();
    expect(lines.join("").startsWith(kept)).toBe(true);
    expect(kept.endsWith("\n")).toBe(true);
    // What is on its way, at most 16 KiB and a line, comes on top.
    expect(kept.length).toBeGreaterThan(1024 * 1024 - 600);
    expect(kept.length).toBeLessThan(1024 * 1024 + 16 * 1024 + 2 * 600);
    log.write("after the flood\n");
    expect(await pipe.readUntil((read) => read.endsWith("flood\n"))).toBe("after the flood\n");
  });

  it("loses a line that is longer than all that may wait, and writes the next one", async () => {
    const log = logTo(pipe.fd);
    log.write(`${"w".repeat(1024 * 1024)}\n`);
    log.write("short\n");
    expect(await pipe.readUntilSilent()).toBe("short\n");
  });

  it("loses what it writes while nobody listens, and goes on when somebody does again", async () => {
    const log = logTo(pipe.fd);
    pipe.hangUp();
    log.write("to nobody\n");
    await pause(150);
    pipe.listen();
    log.write("to somebody\n");
    expect(await pipe.readUntil((read) => read.endsWith("\n"))).toBe("to somebody\n");
  });

  it("writes at the end what was on its way and what waited, in order", async () => {
    const { log, end } = logAndItsEnd(pipe.fd);
    pipe.fill();
    log.write("on its way\n");
    await pause(150);
    log.write("waiting\n");
    expect(pipe.read()).toBe("");
    end();
    expect(pipe.read()).toBe("on its way\nwaiting\n");
  });

  it("writes at the end what nothing was before, and nothing where nothing waits", () => {
    const { log, end } = logAndItsEnd(pipe.fd);
    end();
    expect(pipe.read()).toBe("");
    log.write("last words\n");
    end();
    expect(pipe.read()).toBe("last words\n");
  });

  it("ends in peace where nobody listens any more", () => {
    const { log, end } = logAndItsEnd(pipe.fd);
    log.write("to nobody\n");
    pipe.hangUp();
    expect(end).not.toThrow();
  });

  describe("by a clock that is set by hand", () => {
    beforeEach(() => {
      vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    });
    afterEach(() => {
      vi.useRealTimers();
    });
    /** Lets what was handed to the system be done, without the clock that the log goes by: waits for `done`, or five seconds. */
    const settle = async (done: () => boolean) => {
      const begun = performance.now();
      while (!done() && performance.now() - begun < 5000)
        await new Promise((resolve) => setImmediate(resolve));
    };
    /** Time for what must not happen. */
    const aWhile = () => {
      const begun = performance.now();
      return settle(() => performance.now() - begun > 100);
    };
    /** What the pipe has taken in all once `length` has come. */
    const arrived = async (length: number) => {
      let text = "";
      await settle(() => {
        text += pipe.read();
        return text.length >= length;
      });
      return text;
    };

    it("lets few lines wait for others, 50 ms from the first of them on, then writes them together", async () => {
      const log = logTo(pipe.fd);
      log.write("one\n");
      vi.advanceTimersByTime(30);
      log.write("two\n");
      vi.advanceTimersByTime(19);
      await aWhile();
      expect(pipe.read()).toBe("");
      vi.advanceTimersByTime(1);
      expect(await arrived(8)).toBe("one\ntwo\n");
      expect(vi.getTimerCount()).toBe(0);
    });

    it("lets 16 KiB wait no longer", async () => {
      const log = logTo(pipe.fd);
      log.write(`${"a".repeat(16 * 1024 - 2)}\n`);
      await aWhile();
      expect(pipe.read()).toBe("");
      log.write("\n");
      expect(await arrived(16 * 1024)).toHaveLength(16 * 1024);
      expect(vi.getTimerCount()).toBe(0);
    });

    it("tries a full pipe again after 50 ms", async () => {
      const log = logTo(pipe.fd);
      pipe.fill();
      log.write(`${"b".repeat(16 * 1024)}\n`);
      // It has been refused once it waits to try again.
      await settle(() => vi.getTimerCount() === 1);
      expect(pipe.read()).toBe("");
      vi.advanceTimersByTime(49);
      await aWhile();
      expect(pipe.read()).toBe("");
      vi.advanceTimersByTime(1);
      expect(await arrived(16 * 1024 + 1)).toHaveLength(16 * 1024 + 1);
    });
  });
});

it("a stream that fails ends nothing once readers may go", () => {
  const streams = [process.stdout, process.stderr];
  const before = streams.map((stream) => stream.listeners("error"));
  outliveReaders();
  streams.forEach((stream, n) => {
    const added = stream.listeners("error").filter((listener) => !before[n].includes(listener));
    expect(added).toHaveLength(1);
    expect(() => stream.emit("error", new Error("nobody reads"))).not.toThrow();
    for (const listener of added) stream.off("error", listener as () => void);
  });
});

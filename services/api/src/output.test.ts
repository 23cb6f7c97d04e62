import { closeSync, openSync, readFileSync, rmSync } from "node:fs";
import { mkdtemp } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { PatientLog } from "./output.js";

const pause = (time_ms: number) => new Promise((resolve) => setTimeout(resolve, time_ms));

describe("the log's writer", () => {
  it("writes every line, in order", async () => {
    const folder = await mkdtemp(join(tmpdir(), "log-"));
    const file = join(folder, "log");
    const fd = openSync(file, "a");
    const log = new PatientLog(fd);
    const lines = Array.from({ length: 5000 }, (_, index) => `${index} æøå ${"x".repeat(index % 90)}\n`);
    for (const line of lines) log.write(line);
    await pause(200);
    expect(readFileSync(file, "utf8")).toBe(lines.join(""));
    closeSync(fd);
    rmSync(folder, { recursive: true });
  });

  it("loses lines where it cannot write, and takes no more memory for them", async () => {
    const fd = openSync("/dev/full", "w");
    const log = new PatientLog(fd);
    const before = process.memoryUsage().heapUsed;
    for (let round = 0; round < 200; round += 1) {
      for (let line = 0; line < 100; line += 1) log.write(`${"y".repeat(1000)}\n`);
      await pause(0);
    }
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(60_000_000);
    closeSync(fd);
  });
});

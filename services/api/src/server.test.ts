// Starts the built service as a person does. `npm test` builds it first.
import { type ChildProcess, execFile, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, openSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { afterEach, beforeEach, describe, expect, it } from "vitest";

const entry = fileURLToPath(new URL("../dist/server.js", import.meta.url));

let folder: string;
let child: ChildProcess | undefined;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "server-"));
});
afterEach(() => {
  child?.kill("SIGKILL");
  rmSync(folder, { recursive: true });
});

/** Starts the service with its output in files, which are read back as text. */
function start(environment: Record<string, string>) {
  const out = join(folder, "out");
  const err = join(folder, "err");
  child = spawn(process.execPath, [entry], {
    env: { PATH: process.env["PATH"], ...environment },
    stdio: ["ignore", openSync(out, "w"), openSync(err, "w")],
  });
  return { process: child, out: () => readFileSync(out, "utf8"), err: () => readFileSync(err, "utf8") };
}

async function until(text: () => string, pattern: RegExp): Promise<string> {
  for (let tries = 0; tries < 200; tries += 1) {
    const [, found] = pattern.exec(text()) ?? [];
    if (found !== undefined) return found;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`${pattern} did not come; there is: ${text()}`);
}

describe("the process", () => {
  it("says where it listens and where its documentation is, gives a line that works, and stops when asked", async () => {
    const service = start({ PORT: "0" });
    const line = await until(service.out, /(curl .*)\n/);
    const documentation = await until(service.out, /Documentation: +(\S+)/);
    expect((await fetch(documentation)).status).toBe(200);
    const { stdout } = await promisify(execFile)("sh", ["-c", `${line} --silent --fail`]);
    expect(JSON.parse(stdout)).toMatchObject({
      scene: { water_type: "IB" },
      filter_kind: expect.any(String),
    });
    service.process.kill("SIGTERM");
    const [code, signal] = await once(service.process, "exit");
    expect({ code, signal }).toEqual({ code: 0, signal: null });
    expect(service.err()).toContain("stopping");
  });

  it.each([
    [{ PORT: "eighty" }, 'PORT is "eighty", but must be a whole number from 0 to 65535.'],
    [{ LOG_LEVEL: "loud" }, 'LOG_LEVEL is "loud"'],
    [{ QUIZ_KEYS: "2026-05:1234" }, "QUIZ_KEYS must be keys between commas"],
    [{ INSTRUCTOR_KEY: "1234" }, "INSTRUCTOR_KEY must be 20 to 256 letters"],
    [{ OTEL_EXPORTER_OTLP_ENDPOINT: "collector" }, "OTEL_EXPORTER_OTLP_ENDPOINT must be a URL"],
  ])("does not start with %j, and says why", async (environment, message) => {
    const service = start(environment);
    const [code] = await once(service.process, "exit");
    expect(code).toBe(1);
    expect(service.err()).toContain(message);
    expect(service.err()).not.toContain("1234");
    expect(service.out()).toBe("");
  });

  it.each<[string, Record<string, string>, boolean]>([
    ["says that papers end with it where it has drawn their key itself", {}, true],
    [
      "says nothing of that where it was given one",
      { QUIZ_KEYS: `2026-05:${"00ff1e2d3c4b5a69".repeat(4)}` },
      false,
    ],
  ])("%s", async (_what, environment, isSaid) => {
    const service = start({ PORT: "0", ...environment });
    // The log's lines wait for each other a moment; this one comes after the other.
    await until(service.err, /("msg":"listening")/);
    expect(service.err().includes("papers are sealed with a key of this process")).toBe(isSaid);
  });
});

// The client as a service gives it: installed by npm from its URL into an empty project, without any registry, and used.
import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ask, type Service, start } from "../lifecycle/service.js";

const execute = promisify(execFile);

let service: Service;
let project: string;
let address: string;

const run = (command: string, words: string[], cwd = project) =>
  execute(command, words, { cwd, env: { PATH: process.env["PATH"], HOME: project } });

beforeAll(async () => {
  service = await start({ LOG_LEVEL: "silent" });
  address = `http://127.0.0.1:${service.port}`;
  project = mkdtempSync(join(tmpdir(), "installs-"));
  writeFileSync(
    join(project, "package.json"),
    JSON.stringify({ name: "shop", private: true, type: "module" }),
  );
});
afterAll(() => {
  service.process.kill("SIGKILL");
  rmSync(project, { recursive: true });
});

describe("the client that a service gives", { timeout: 120_000 }, () => {
  it("installs from its URL, and the lock file pins that file", async () => {
    const { version, tarball, integrity } = JSON.parse((await ask(service.port, "/sdk")).text);
    // Nothing listens there: what the client needs, it brings.
    const nowhere = "--registry=http://127.0.0.1:9/";
    await run("npm", ["install", "--no-audit", "--no-fund", nowhere, address + tarball]);
    const lock = JSON.parse(readFileSync(join(project, "package-lock.json"), "utf8"));
    expect(lock.packages["node_modules/@sunfathom/sdk"]).toMatchObject({
      version,
      resolved: address + tarball,
      integrity,
    });
  });

  it("asks the service it came from, and computes the same without it", async () => {
    const scene = { water_type: "IB", depth_m: 12 };
    writeFileSync(
      join(project, "ask.js"),
      `import { Sunfathom } from "@sunfathom/sdk";
import { OfflineSunfathom } from "@sunfathom/sdk/offline";
const asked = [new Sunfathom({ baseUrl: ${JSON.stringify(address)} }), new OfflineSunfathom()];
const answers = [];
for (const { calculations } of asked) answers.push(JSON.stringify(await calculations.attenuation(${JSON.stringify(scene)})));
console.log(JSON.stringify({ same: answers[0] === answers[1], answer: JSON.parse(answers[0]) }));
`,
    );
    const { stdout } = await run(process.execPath, ["ask.js"]);
    const { same, answer } = JSON.parse(stdout);
    expect(same).toBe(true);
    expect(answer).toEqual(JSON.parse((await ask(service.port, "/v1/attenuation", scene)).text));
  });

  it("is not made by packing the workspace's folder, which refuses", async () => {
    const folder = new URL("../../packages/sdk/", import.meta.url).pathname;
    await expect(run("npm", ["pack", "--dry-run"], folder)).rejects.toMatchObject({
      stderr: expect.stringContaining("not what is published"),
    });
  });
});

// The audit against a registry of its own on this machine, which answers as registries do: the report of
// POST /-/npm/v1/security/audits/quick, as npm's documentation describes it.
import { execFile } from "node:child_process";
import { once } from "node:events";
import { createServer, type Server } from "node:http";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";

const script = fileURLToPath(new URL("../.ci/audit.mjs", import.meta.url));

const servers: Server[] = [];
afterAll(() => {
  for (const server of servers) server.close();
});

async function registry(status: number, answer: object): Promise<string> {
  const server = createServer((request, response) => {
    request.resume().on("end", () => {
      response.writeHead(status, { "content-type": "application/json" }).end(JSON.stringify(answer));
    });
  }).listen(0, "127.0.0.1");
  servers.push(server);
  await once(server, "listening");
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("no port");
  return `http://127.0.0.1:${address.port}/`;
}

function audit(url: string): Promise<{ status: number; output: string }> {
  return new Promise((resolve) => {
    const child = execFile(process.execPath, [script, `--registry=${url}`], (_, stdout) =>
      resolve({ status: child.exitCode ?? -1, output: stdout }),
    );
  });
}

const advisory = (severity: string) => ({
  id: 1,
  module_name: "fastify",
  severity,
  title: "Made up",
  url: "https://advisories.example/1",
  vulnerable_versions: "<6.0.0",
  patched_versions: ">=6.0.0",
  findings: [
    { version: "5.12.8", paths: ["services__api>fastify"], dev: false, optional: false, bundled: false },
  ],
  cves: [],
  cwe: "CWE-1",
  github_advisory_id: "GHSA-0000-0000-0000",
});

const report = (severity: string) => ({
  actions: [],
  muted: [],
  advisories: { 1: advisory(severity) },
  metadata: {
    vulnerabilities: { info: 0, low: 0, moderate: 0, high: 0, critical: 0, [severity]: 1 },
    dependencies: 1,
    devDependencies: 0,
    optionalDependencies: 0,
    totalDependencies: 1,
  },
});

describe("the audit", () => {
  it.concurrent.each([
    ["moderate", 0, "1 advisories, 0 of them high or critical"],
    ["high", 1, "high: fastify <6.0.0: Made up https://advisories.example/1"],
    ["critical", 1, "1 advisories, 1 of them high or critical"],
  ])(
    "of an advisory that is %s ends with %d",
    async (severity, status, line) => {
      const done = await audit(await registry(200, report(severity)));
      expect(done.output).toContain(`[audit] ${line}`);
      expect(done.status).toBe(status);
    },
    60_000,
  );

  it.concurrent("that the registry does not do fails nothing, and says so", async () => {
    const done = await audit(await registry(405, {}));
    expect(done.output).toContain("[audit] NOT DONE, the registry cannot be asked: ");
    expect(done.status).toBe(0);
  });
});

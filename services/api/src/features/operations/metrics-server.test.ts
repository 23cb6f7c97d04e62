import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterEach, expect, it } from "vitest";
import { serveMetrics } from "./metrics-server.js";

const open: Server[] = [];
afterEach(() => {
  for (const server of open.splice(0)) server.close();
});

const contentType = "application/openmetrics-text; version=1.0.0; charset=utf-8";

async function start(metrics = async () => "# EOF\n") {
  const server = await serveMetrics({ metrics, contentType }, { host: "127.0.0.1", port: 0 });
  open.push(server);
  const { port } = server.address() as AddressInfo;
  return { port, ask: (path: string, init?: RequestInit) => fetch(`http://127.0.0.1:${port}${path}`, init) };
}

it("metrics are at their path, in their form, and kept by nobody", async () => {
  const { ask } = await start();
  const answer = await ask("/metrics");
  expect([answer.status, await answer.text()]).toEqual([200, "# EOF\n"]);
  expect(answer.headers.get("content-type")).toBe(contentType);
  expect(answer.headers.get("cache-control")).toBe("no-store");
});

it("nothing else is there", async () => {
  const { ask } = await start();
  for (const path of ["/", "/metrics/", "/metrics?a=1", "/v1/models"])
    expect((await ask(path)).status).toBe(404);
  expect((await ask("/metrics", { method: "POST" })).status).toBe(404);
});

it("metrics that cannot be read are an error of that request alone", async () => {
  let fails = true;
  const { ask } = await start(async () => {
    if (fails) throw new Error("secret");
    return "# EOF\n";
  });
  const failed = await ask("/metrics");
  expect([failed.status, await failed.text()]).toEqual([500, ""]);
  fails = false;
  expect((await ask("/metrics")).status).toBe(200);
});

it("an address that is taken is said", async () => {
  const { port } = await start();
  await expect(
    serveMetrics({ metrics: async () => "", contentType }, { host: "127.0.0.1", port }),
  ).rejects.toThrow("EADDRINUSE");
});

// More connections than the process may have files open, and more of one address than there are: silent ones, which cost
// their caller nothing. The service lives, and others are served.
import { connect, type Socket } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { askFrom, pause, type Service, start } from "../lifecycle/service.js";

let service: Service | undefined;
const held: Socket[] = [];
afterEach(() => {
  for (const socket of held.splice(0)) socket.destroy();
  service?.process.kill("SIGKILL");
});

/** Connects so often from an address of this machine, and says nothing. */
async function connectSilently(port: number, count: number, localAddress: string): Promise<void> {
  for (let nth = 0; nth < count; nth += 1) {
    const socket = connect({ port, host: "127.0.0.1", localAddress });
    socket.on("error", () => {});
    held.push(socket);
    if (nth % 100 === 99) await pause(20);
  }
}

describe("silent connections", () => {
  it("beyond the files that the process may open do not end it, nor keep others out", async () => {
    service = await start({ LOG_LEVEL: "warn" }, ["ignore", "ignore", "pipe"], 1024);
    const { port, process: child } = service;
    let log = "";
    child.stderr?.on("data", (part) => {
      log += part;
    });
    await connectSilently(port, 1200, "127.0.0.2");
    for (let second = 0; second < 4; second += 1) {
      await pause(1000);
      expect(await askFrom(port, "127.0.0.3", "/health/live")).toBe(200);
    }
    expect(child.exitCode).toBeNull();
    expect(log).toContain("the system allows 1024 open files: 896 connections");
  });

  it("of so many addresses that all places are taken do not end it, and are gone in time", async () => {
    service = await start({}, "ignore", 1024);
    const { port, process: child } = service;
    for (const end of [2, 3, 4, 5, 6, 7]) await connectSilently(port, 250, `127.0.0.${end}`);
    await pause(4000);
    expect(child.exitCode).toBeNull();
    // Until the headers of each should have come.
    let status = 0;
    for (let tries = 0; status === 0 && tries < 20; tries += 1) {
      await pause(1000);
      status = await askFrom(port, "127.0.0.9", "/health/live");
    }
    expect(status).toBe(200);
    expect(child.exitCode).toBeNull();
  });

  it("of one address, more than all places, leave others theirs", async () => {
    service = await start();
    const { port } = service;
    await connectSilently(port, 4200, "127.0.0.2");
    for (const path of ["/health/live", "/v1/models", "/v1/models"])
      expect(await askFrom(port, "127.0.0.3", path)).toBe(200);
  });
});

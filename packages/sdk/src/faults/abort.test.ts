// Aborting ends a call at once in each of its phases and leaves nothing behind: no timer, no listener, no connection.
import { getEventListeners } from "node:events";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { AbortedError, Sunfathom } from "../index.js";
import { ClientClock } from "./client-clock.test-support.js";
import { turn } from "./drive.test-support.js";
import {
  FaultServer,
  ok,
  problemWith,
  stall,
  stallInBody,
  stallInHead,
} from "./fault-server.test-support.js";

let faults: FaultServer;
let baseUrl: string;
let client: Sunfathom;
let clock: ClientClock;

beforeEach(async () => {
  faults = new FaultServer();
  baseUrl = await faults.listen();
  client = new Sunfathom({ baseUrl });
  clock = new ClientClock("2026-06-10T08:00:00Z");
});
afterEach(async () => {
  clock.end();
  await faults.close();
});

/** Turns the loop until something holds. */
async function until(holds: () => boolean) {
  while (!holds()) await turn();
}

describe("aborting", () => {
  it("before a call sends nothing", async () => {
    const call = client.reference.models({ signal: AbortSignal.abort("left the page") });
    await expect(call).rejects.toMatchObject({ name: "AbortedError", cause: "left the page" });
    expect(faults.seen).toEqual([]);
  });

  it.each([
    ["while the head is awaited", stall, 1],
    ["in the middle of the head", stallInHead, 1],
    ["while the body is awaited", stallInBody, 1],
    ["while the next attempt is awaited", problemWith(503, "unavailable", { "retry-after": "9" }), 2],
  ] as const)("%s", async (_when, fault, timersSet) => {
    faults.faults = [fault];
    const controller = new AbortController();
    const call = client.reference.models({ signal: controller.signal });
    const caught = call.catch((error: unknown) => error);
    await until(() => faults.seen.length === 1 && clock.set.length === timersSet);
    for (let turns = 0; turns < 20; turns += 1) await turn();
    expect(clock.running).toBe(1);
    expect(getEventListeners(controller.signal, "abort")).toHaveLength(1);
    controller.abort("left the page");
    const error = await caught;
    expect(error).toBeInstanceOf(AbortedError);
    expect(error).toMatchObject({ cause: "left the page" });
    expect(clock.running).toBe(0);
    expect(getEventListeners(controller.signal, "abort")).toHaveLength(0);
    if (timersSet === 1) await until(() => faults.hungUp);
  });

  it("while a cache is asked sends nothing", async () => {
    const controller = new AbortController();
    const cache = {
      get: async () => {
        controller.abort("left the page");
        return undefined;
      },
      set: () => undefined,
    };
    const caching = new Sunfathom({ baseUrl, cache });
    const call = caching.reference.models({ signal: controller.signal });
    await expect(call).rejects.toMatchObject({ name: "AbortedError", cause: "left the page" });
    expect(faults.seen).toEqual([]);
    expect(clock.running).toBe(0);
    expect(getEventListeners(controller.signal, "abort")).toHaveLength(0);
  });

  it("after a call changes nothing, and leaves no listener on a signal of many calls", async () => {
    faults.faults = [ok];
    const controller = new AbortController();
    for (let call = 0; call < 3; call += 1) await client.reference.models({ signal: controller.signal });
    expect(getEventListeners(controller.signal, "abort")).toHaveLength(0);
    expect(clock.running).toBe(0);
  });
});

it("a failure is heard of once, also where only the response was asked for", async () => {
  const unhandled = vi.fn();
  process.on("unhandledRejection", unhandled);
  faults.faults = [problemWith(400, "invalid_scene")];
  await expect(client.reference.models().withResponse()).rejects.toMatchObject({ code: "invalid_scene" });
  for (let turns = 0; turns < 5; turns += 1) await turn();
  process.off("unhandledRejection", unhandled);
  expect(unhandled).not.toHaveBeenCalled();
});

import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { answerWith, type Fault, FaultServer, ok } from "../faults/fault-server.test-support.js";
import { AbortedError, Sunfathom } from "../index.js";

let faults: FaultServer;
let baseUrl: string;

beforeEach(async () => {
  faults = new FaultServer();
  baseUrl = await faults.listen();
});
afterEach(() => faults.close());

const untilSeen = async (count: number) => {
  while (faults.seen.length < count) await new Promise(setImmediate);
};

describe("calls of a client with a concurrency", () => {
  it("go so many at a time, in the order in which they came", async () => {
    const held: (() => void)[] = [];
    const hold: Fault = (response, request) => held.push(() => ok(response, request));
    faults.faults = [hold];
    const client = new Sunfathom({ baseUrl, concurrency: 2 });
    const calls = [1, 2, 3, 4, 5].map((depth_m) =>
      client.calculations.attenuation({ water_type: "IB", depth_m }),
    );
    for (const seen of [2, 3, 4, 5]) {
      await untilSeen(seen);
      // What does not come cannot be awaited: the third would have come with the first two.
      expect(faults.seen).toHaveLength(seen);
      held.shift()?.();
    }
    held.shift()?.();
    await Promise.all(calls);
    expect(faults.seen.map(({ body }) => JSON.parse(body).depth_m)).toEqual([1, 2, 3, 4, 5]);
  });

  it("leave their place in the queue when they are aborted", async () => {
    let answer = () => {};
    faults.faults = [
      (response, request) => {
        answer = () => ok(response, request);
      },
      ok,
    ];
    const client = new Sunfathom({ baseUrl, concurrency: 1 });
    const first = client.reference.models();
    const controller = new AbortController();
    const second = client.reference.waterTypes({ signal: controller.signal });
    const third = client.reference.filterKinds();
    await untilSeen(1);
    controller.abort("left");
    await expect(second).rejects.toBeInstanceOf(AbortedError);
    answer();
    await Promise.all([first, third]);
    expect(faults.seen.map(({ url }) => url)).toEqual(["/v1/models", "/v1/filter-kinds"]);
  });

  it("hand their place on when they fail", async () => {
    faults.faults = [answerWith(404, {}), ok];
    const client = new Sunfathom({ baseUrl, concurrency: 1 });
    const [first, second] = await Promise.allSettled([
      client.reference.models(),
      client.reference.waterTypes(),
    ]);
    expect([first.status, second.status]).toEqual(["rejected", "fulfilled"]);
  });
});

describe("after the service asked one call to wait", () => {
  it.each([429, 503])("others wait as long (%s)", async (status) => {
    faults.faults = [answerWith(status, {}, { "retry-after": "1" }), ok];
    const client = new Sunfathom({ baseUrl, maxRetries: 0 });
    await expect(client.reference.models()).rejects.toMatchObject({ status });
    const since = Date.now();
    await client.reference.models();
    // Timers may come a millisecond early.
    expect(Date.now() - since).toBeGreaterThan(900);
  });

  it("a call that waits ends when it is aborted, and gives its place back", async () => {
    faults.faults = [answerWith(503, {}, { "retry-after": "30" }), ok];
    const client = new Sunfathom({ baseUrl, maxRetries: 0, concurrency: 1 });
    await expect(client.reference.models()).rejects.toMatchObject({ status: 503 });
    for (const _ of [1, 2]) {
      const signal = AbortSignal.timeout(5);
      await expect(client.reference.models({ signal })).rejects.toBeInstanceOf(AbortedError);
    }
    expect(faults.seen).toHaveLength(1);
  });

  it("nobody waits where it asks for longer than a minute", async () => {
    faults.faults = [answerWith(503, {}, { "retry-after": "61" }), ok];
    const client = new Sunfathom({ baseUrl, maxRetries: 0 });
    await expect(client.reference.models()).rejects.toMatchObject({ status: 503 });
    await client.reference.models();
  });
});

describe("a concurrency", () => {
  it.each([0, -1, 1.5, Number.NaN, "2"])("of %s is refused", (concurrency) => {
    expect(() => new Sunfathom({ baseUrl, concurrency: concurrency as number })).toThrow(
      /^concurrency is .*, but must be a whole number from 1 on\.$/,
    );
  });
});

it("a client without options says what is missing", () => {
  const Untyped = Sunfathom as unknown as new () => Sunfathom;
  expect(() => new Untyped()).toThrow(
    "baseUrl is missing, but must be a URL such as https://light.example.org.",
  );
});

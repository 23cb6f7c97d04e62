// Traces of the process: sent before it ends, never in its way, and not even loaded where nobody asks for them.
import { afterEach, describe, expect, it } from "vitest";
import { type Receiver, receive } from "../../services/api/src/plugins/otlp-receiver.test-support.js";
import { ask, type Service, start } from "./service.js";

let service: Service | undefined;
let receiver: Receiver | undefined;
afterEach(() => {
  service?.process.kill("SIGKILL");
  receiver?.close();
});

/** Counts, as the process ends, the files that it has loaded of what makes traces. */
const counting = `import{createRequire}from"node:module";process.on("exit",()=>process.stdout.write("loaded "+Object.keys(createRequire("file:///").cache).filter((name)=>name.includes("@opentelemetry/sdk-trace")).length))`;

async function startCounting(environment: Record<string, string>): Promise<() => Promise<number>> {
  service = await start(
    {
      DRAIN_MS: "0",
      NODE_OPTIONS: `--import data:text/javascript,${encodeURIComponent(counting)}`,
      ...environment,
    },
    ["ignore", "pipe", "ignore"],
  );
  let text = "";
  service.process.stdout?.setEncoding("utf8").on("data", (part) => {
    text += part;
  });
  const { process: child, ended } = service;
  return async () => {
    child.kill("SIGTERM");
    expect(await ended).toEqual({ code: 0, signal: null });
    return Number(/loaded (\d+)/.exec(text)?.[1]);
  };
}

describe("traces", () => {
  it("of the last answer are sent before the process ends", async () => {
    receiver = await receive();
    const stop = await startCounting({ OTEL_EXPORTER_OTLP_ENDPOINT: receiver.endpoint });
    expect((await ask(service?.port ?? 0, "/v1/attenuation", { water_type: "IB", depth_m: 5 })).status).toBe(
      200,
    );
    expect(await stop()).toBeGreaterThan(0);
    expect(receiver.spans.map(({ name }) => name)).toContain("POST /v1/attenuation");
  });

  it("are not loaded where no endpoint is given", async () => {
    const stop = await startCounting({});
    expect((await ask(service?.port ?? 0, "/v1/models")).status).toBe(200);
    expect(await stop()).toBe(0);
  });

  it("that nobody takes cost no answer, and the process ends within its grace", async () => {
    receiver = await receive(0);
    const stop = await startCounting({ OTEL_EXPORTER_OTLP_ENDPOINT: receiver.endpoint, GRACE_MS: "10000" });
    for (let round = 0; round < 20; round += 1)
      expect((await ask(service?.port ?? 0, "/v1/models")).status).toBe(200);
    const asked = performance.now();
    await stop();
    expect(performance.now() - asked).toBeLessThan(9000);
  });
});

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readConfig } from "./config.js";
import { defaultLimits } from "./limits.js";
import { defaultQuizSettings } from "./quiz-settings.js";

describe("the configuration", () => {
  it("has defaults that keep the service to this machine", () => {
    expect(readConfig({})).toEqual({
      host: "127.0.0.1",
      port: 8080,
      logLevel: "info",
      limits: defaultLimits,
      exposure: { corsOrigins: [], trustedProxies: [], metricsAt: { host: "127.0.0.1", port: 9464 } },
      quiz: defaultQuizSettings,
      drain_ms: 1000,
      grace_ms: 25_000,
    });
  });

  it("is what the environment says", () => {
    const env = {
      HOST: "0.0.0.0",
      PORT: "0",
      LOG_LEVEL: "silent",
      RATE_LIMIT_COST: "10",
      RATE_LIMIT_WINDOW_S: "2",
      WORKERS: "3",
      HEAVY_PER_CLIENT: "5",
      MAX_CONNECTIONS: "5",
      MAX_CONNECTIONS_PER_ADDRESS: "3",
      ANSWER_CACHE_BYTES: "0",
      ANSWER_TIMEOUT_S: "60",
      CORS_ORIGINS: "https://shop.example, http://localhost:3000",
      TRUST_PROXY: "loopback,10.0.0.0/8, 2001:db8::/32",
      METRICS_LISTEN: "[::1]:9000",
      QUIZ_TOKEN_LIFETIME_S: "3600",
      DRAIN_MS: "0",
      GRACE_MS: "100",
      OTHER: "x",
    };
    expect(readConfig(env)).toEqual({
      host: "0.0.0.0",
      port: 0,
      logLevel: "silent",
      limits: {
        ...defaultLimits,
        costPerWindow: 10,
        window_s: 2,
        workers: 3,
        heavyPerClient: 5,
        connections: 5,
        connectionsPerAddress: 3,
        answerCacheBytes: 0,
        handlerTimeout_ms: 60_000,
        connectionTimeout_ms: 70_000,
      },
      exposure: {
        corsOrigins: ["https://shop.example", "http://localhost:3000"],
        trustedProxies: ["loopback", "10.0.0.0/8", "2001:db8::/32"],
        metricsAt: { host: "::1", port: 9000 },
      },
      quiz: { keyring: undefined, tokenLifetime_s: 3600, instructorKey: undefined },
      drain_ms: 0,
      grace_ms: 100,
    });
    expect(readConfig({ METRICS_LISTEN: "off" }).exposure.metricsAt).toBeUndefined();
    expect(readConfig({ CORS_ORIGINS: "*" }).exposure.corsOrigins).toBe("*");
  });

  it("refuses a variable that is gone, which would be passed over in silence", () => {
    expect(() => readConfig({ METRICS: "off" })).toThrow(/^METRICS .*METRICS_LISTEN /);
    expect(() => readConfig({ RATE_LIMIT_REQUESTS: "300" })).toThrow(
      /^RATE_LIMIT_REQUESTS .*RATE_LIMIT_COST /,
    );
    expect(() => readConfig({ MAX_EVENT_LOOP_DELAY_MS: "" })).toThrow(/^MAX_EVENT_LOOP_DELAY_MS .*WORKERS/);
  });

  it("is explained for contributors, each variable by its name", () => {
    const read = new Set<string>();
    const watched = new Proxy<Record<string, string>>(
      {},
      {
        get: (_, name) => {
          read.add(String(name));
          return undefined;
        },
      },
    );
    readConfig(watched);
    const page = readFileSync(new URL("../../../../DEVELOPERS.md", import.meta.url), "utf8");
    expect(read.size).toBeGreaterThan(12);
    // Read to be refused.
    for (const name of ["METRICS", "RATE_LIMIT_REQUESTS", "MAX_EVENT_LOOP_DELAY_MS"]) read.delete(name);
    expect([...read].filter((name) => !page.includes(`\`${name}\``))).toEqual([]);
  });

  it.each([
    ["PORT", ""],
    ["PORT", "80a"],
    ["PORT", "-1"],
    ["PORT", "65536"],
    ["PORT", "8e3"],
    ["PORT", "80.5"],
    ["HOST", ""],
    ["HOST", "http://127.0.0.1"],
    ["LOG_LEVEL", ""],
    ["LOG_LEVEL", "loud"],
    ["RATE_LIMIT_COST", "many"],
    ["RATE_LIMIT_WINDOW_S", "0"],
    ["WORKERS", "0"],
    ["HEAVY_PER_CLIENT", "-1"],
    ["MAX_CONNECTIONS", "0"],
    ["MAX_CONNECTIONS_PER_ADDRESS", "0"],
    ["ANSWER_CACHE_BYTES", "-1"],
    ["ANSWER_TIMEOUT_S", "0"],
    ["CORS_ORIGINS", ""],
    ["CORS_ORIGINS", "shop.example"],
    ["CORS_ORIGINS", "https://shop.example/page"],
    ["CORS_ORIGINS", "https://shop.example,*"],
    ["CORS_ORIGINS", "https://*.example"],
    ["TRUST_PROXY", ""],
    ["TRUST_PROXY", "true"],
    ["TRUST_PROXY", "10.0.0.0/33"],
    ["TRUST_PROXY", "0.0.0.0/0"],
    ["TRUST_PROXY", "10.0.0.0/8, ::/0"],
    ["TRUST_PROXY", "10.0.0.0/8/8"],
    ["METRICS_LISTEN", ""],
    ["METRICS_LISTEN", "on"],
    ["METRICS_LISTEN", "9464"],
    ["METRICS_LISTEN", "127.0.0.1:65536"],
    ["METRICS_LISTEN", "::1:9464"],
    ["METRICS_LISTEN", "http://127.0.0.1:9464"],
    ["QUIZ_TOKEN_LIFETIME_S", "59"],
    ["QUIZ_TOKEN_LIFETIME_S", "1h"],
    ["DRAIN_MS", "1s"],
    ["GRACE_MS", "1e3"],
  ])("refuses %s=%j by name", (name, value) => {
    expect(() => readConfig({ [name]: value })).toThrow(`${name} is ${JSON.stringify(value)}, but must be `);
  });
});

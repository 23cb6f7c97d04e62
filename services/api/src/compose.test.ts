// The files for `docker compose` name what there is: settings that the service reads, and a Dockerfile. No daemon is asked.
import { randomBytes } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { readConfig } from "./config/config.js";

interface Service {
  image: string;
  build?: { context: string; dockerfile: string };
  environment?: Record<string, string>;
  deploy?: { replicas: number };
  stop_grace_period?: string;
}

const file = (name: string) => fileURLToPath(new URL(`../${name}`, import.meta.url));
const read = (name: string) =>
  parse(readFileSync(file(name), "utf8")) as { services: Record<string, Service>; networks?: object };
const sunfathomOf = (name: string) => read(name).services["sunfathom"] as Service;

/** What the file says, with the variables of a caller's shell put in. */
const filled = (environment: Record<string, string> = {}, shell: Record<string, string> = {}) =>
  Object.fromEntries(
    Object.entries(environment)
      .map(([name, value]) => [name, value.replace(/\$\{(\w+)[^}]*\}/, (_, key) => shell[key] ?? "")])
      .filter(([, value]) => value !== ""),
  );

describe.each(["compose.yaml", "compose.replicas.yaml"])("%s", (name) => {
  it("builds from the Dockerfile that there is", () => {
    const { context, dockerfile } = sunfathomOf(name).build ?? { context: "", dockerfile: "" };
    expect(existsSync(resolve(dirname(file(name)), context, dockerfile))).toBe(true);
  });

  it("sets what the service reads, and it starts with that", () => {
    const QUIZ_KEYS = `k1:${randomBytes(32).toString("hex")}`;
    const environment = filled(sunfathomOf(name).environment, { QUIZ_KEYS });
    const { quiz, exposure } = readConfig(environment);
    expect(quiz.keyring?.current).toBe("k1");
    expect(exposure.trustedProxies).toEqual(name === "compose.yaml" ? [] : ["10.77.0.0/24"]);
  });

  it("lets the service answer what it was asked before it ends it", () => {
    const { drain_ms, grace_ms } = readConfig({});
    const grace_s = Number(/^(\d+)s$/.exec(sunfathomOf(name).stop_grace_period ?? "")?.[1]);
    expect(1000 * grace_s).toBeGreaterThan(drain_ms + grace_ms);
  });
});

it("replicas do not start without a key that all of them have, and trust the proxy's network alone", () => {
  const { deploy, environment } = sunfathomOf("compose.replicas.yaml");
  expect(deploy?.replicas).toBe(2);
  expect(environment?.["QUIZ_KEYS"]).toMatch(/^\$\{QUIZ_KEYS:\?/);
  expect(JSON.stringify(read("compose.replicas.yaml").networks)).toContain("10.77.0.0/24");
});

// Six practice packages, drawn anew for each run unless SCORM_SEED says which, played in Chromium within scorm-again. A hundred of
// them in `npm run prove`.
import { randomBytes } from "node:crypto";
import type { FastifyInstance } from "fastify";
import { type Browser, chromium as engine } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { chromium, launchOptions } from "./browser.js";
import { startService } from "./packages.js";
import { playPackage } from "./play.js";

const PACKAGES = Number(process.env["SCORM_PACKAGES"] ?? (process.env["PROVE"] === "on" ? 100 : 6));
const seed = process.env["SCORM_SEED"] ?? randomBytes(4).toString("hex");
const levels = ["beginner", "working", "expert"];

let app: FastifyInstance;
let browser: Browser;
beforeAll(async () => {
  if (chromium === undefined) return;
  app = await startService();
  browser = await engine.launch(launchOptions);
});
afterAll(async () => {
  await browser?.close();
  await app?.close();
});

describe.skipIf(chromium === undefined)(`practice packages, played in Chromium (SCORM_SEED=${seed})`, () => {
  const papers = Array.from({ length: PACKAGES }, (_, i) => ({
    seed: `${seed} ${i}`,
    level: levels[i % levels.length] ?? "beginner",
    count: 6,
  }));
  let partly = 0;

  it.each(papers)("$seed, $level: every answer earns what the service gives", async (asked) => {
    const tally = await playPackage(app, browser, asked);
    expect(tally.right).toBeGreaterThanOrEqual(asked.count);
    expect(tally.wrong).toBeGreaterThan(0);
    expect(tally.blank).toBe(2);
    partly += tally.partly;
  });

  it("among them answers that are right in part", () => {
    expect(partly).toBeGreaterThan(0);
  });
});

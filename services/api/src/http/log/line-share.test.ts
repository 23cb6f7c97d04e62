import { Writable } from "node:stream";
import { pino } from "pino";
import request from "supertest";
import { afterEach, expect, it } from "vitest";
import type { createApp } from "../../app.js";
import { buildApp } from "../../build-app.test-support.js";
import { eventually } from "../../eventually.test-support.js";

let app: Awaited<ReturnType<typeof createApp>> | undefined;
afterEach(() => app?.close());

/** Asks so often, and gives the lines that were written. */
async function linesOf(costPerWindow: number, paths: readonly string[]) {
  const lines: { level: number; msg: string; route?: string; status?: number; lines?: number }[] = [];
  const stream = new Writable({
    write(line, _, done) {
      lines.push(JSON.parse(String(line)));
      done();
    },
  });
  app = await buildApp({
    logger: pino({ base: null }, stream),
    limits: { costPerWindow, window_s: 86_400 },
  });
  await app.ready();
  lines.length = 0;
  for (const path of paths) await request(app.server).get(path);
  return lines;
}

const times = (count: number, path: string) => Array.from({ length: count }, () => path);

it("a client's requests have their lines as far as its budget goes, and what is left out is told", async () => {
  const lines = await linesOf(20, [...times(20, "/v1/models"), ...times(30, "/health/live")]);
  const told = lines.filter(({ msg }) => msg === "request");
  expect(told).toHaveLength(20);
  expect(new Set(told.map(({ route, status }) => `${route} ${status}`))).toEqual(new Set(["/v1/models 200"]));
  await eventually(
    () =>
      expect(lines.at(-1)).toMatchObject({ level: 40, lines: 30, msg: expect.stringContaining("left out") }),
    3000,
  );
});

it("health that is asked for without end fills no log, and is answered all the same", async () => {
  const lines = await linesOf(20, times(100, "/health/live"));
  expect(lines.filter(({ msg }) => msg === "request")).toHaveLength(20);
  expect((await request(app?.server ?? "").get("/health/live")).status).toBe(200);
});

it("all have a line where a client may ask for any amount", async () => {
  const lines = await linesOf(0, times(50, "/health/live"));
  expect(lines.filter(({ msg }) => msg === "request")).toHaveLength(50);
});

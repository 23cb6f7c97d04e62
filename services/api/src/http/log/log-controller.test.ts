import { once } from "node:events";
import { type AddressInfo, connect } from "node:net";
import { Writable } from "node:stream";
import { pino } from "pino";
import request from "supertest";
import { describe, expect, it } from "vitest";
import type { createApp } from "../../app.js";
import { buildApp } from "../../build-app.test-support.js";
import { eventually } from "../../eventually.test-support.js";

/** What the service logs while it answers `requests`. */
async function logOf(
  requests: (server: Awaited<ReturnType<typeof createApp>>, lines: readonly string[]) => Promise<unknown>,
) {
  const lines: string[] = [];
  const stream = new Writable({
    write(line, _, done) {
      lines.push(String(line));
      done();
    },
  });
  const app = await buildApp({ logger: pino({ level: "trace", base: null }, stream) });
  app.get("/test/takes-a-while", () => new Promise((done) => setTimeout(done, 120, {})));
  app.get("/test/takes-long", () => new Promise((done) => setTimeout(done, 2000, {})));
  app.get("/test/breaks", () => {
    throw new Error("broken inside");
  });
  app.get("/test/breaks-after", async () => ({}));
  app.addHook("onResponse", async (request) => {
    if (request.url === "/test/breaks-after") throw new Error("broken behind");
  });
  await app.ready();
  // What is said at the start is of no request.
  lines.length = 0;
  await requests(app, lines);
  await app.close();
  return lines.map((line) => JSON.parse(line));
}

/** Sends `text` as it stands and hangs up while the service is at it. */
async function sendAndLeave(app: Awaited<ReturnType<typeof createApp>>, text: string) {
  await app.listen({ host: "127.0.0.1", port: 0 });
  const socket = connect((app.server.address() as AddressInfo).port, "127.0.0.1");
  socket.write(text);
  await once(app.server, "request");
  socket.destroy();
  await once(socket, "close");
}

describe("the log", () => {
  it.each([
    ["was answered", { head: "GET /test/takes-long HTTP/1.1", body: "" }],
    [
      "had sent all of its body",
      {
        head: "POST /v1/attenuation HTTP/1.1\r\nContent-Type: application/json\r\nContent-Length: 200",
        body: '{"water',
      },
    ],
  ])("has one line of a request whose caller left before it %s", async (_, { head, body }) => {
    const lines = await logOf(async (app, written) => {
      await sendAndLeave(app, `${head}\r\nHost: here\r\nX-Request-Id: four\r\n\r\n${body}`);
      await eventually(() => expect(written.join("")).toContain("four"));
    });
    const [line, ...others] = lines.filter(({ request_id }) => request_id === "four");
    expect(others).toEqual([]);
    const [method, route] = head.split(" ");
    expect(line).toMatchObject({
      level: 30,
      msg: "connection closed before the whole answer had left",
      method,
      route,
    });
    expect(line).not.toHaveProperty("status");
    expect(line.ms).toBeGreaterThan(0);
    expect(line.ms).toBeLessThan(2000);
  });

  it("has one line a request, with its id, route, status and time", async () => {
    const [line, ...others] = await logOf((app) =>
      request(app.server).get("/v1/models").set("X-Request-Id", "one").expect(200),
    );
    expect(others).toEqual([]);
    expect(line).toMatchObject({ level: 30, msg: "request", request_id: "one", method: "GET" });
    expect(line).toMatchObject({ route: "/v1/models", status: 200 });
  });

  it("tells the time in milliseconds, to a tenth", async () => {
    const started = performance.now();
    const [line] = await logOf((app) => request(app.server).get("/test/takes-a-while").expect(200));
    expect(line.ms).toBeGreaterThan(110);
    expect(line.ms).toBeLessThan(performance.now() - started);
    expect(line.ms * 10).toBeCloseTo(Math.round(line.ms * 10), 6);
  });

  it("has no path of what leads nowhere", async () => {
    const [line] = await logOf((app) => request(app.server).get("/made/up").expect(404));
    expect(line).toMatchObject({ route: "none", status: 404 });
  });

  it("has nothing of what callers send", async () => {
    const lines = await logOf(async (app) => {
      const { server } = app;
      await request(server).get("/v1/attenuation?water_type=secret1&secret2=secret3");
      await request(server)
        .post("/v1/attenuation")
        .set("Authorization", "Bearer secret4")
        .send({ secret5: "secret6" });
      await request(server).post("/v1/attenuation").set("Content-Type", "application/json").send('{"secret7');
      await request(server).get("/secret8/secret9");
    });
    expect(lines).toHaveLength(4);
    expect(JSON.stringify(lines)).not.toContain("secret");
  });

  it("has the failure of the service, under the id that the caller was told", async () => {
    const lines = await logOf((app) =>
      request(app.server).get("/test/breaks").set("X-Request-Id", "two").expect(500),
    );
    expect(lines[0]).toMatchObject({ level: 50, request_id: "two", err: { message: "broken inside" } });
    expect(lines[1]).toMatchObject({ request_id: "two", status: 500 });
  });

  it("has what fails behind an answer, in the one line of its request", async () => {
    const [line, ...others] = await logOf((app) =>
      request(app.server).get("/test/breaks-after").set("X-Request-Id", "three").expect(200),
    );
    expect(others).toEqual([]);
    expect(line).toMatchObject({ level: 50, msg: "request failed after its answer", request_id: "three" });
    expect(line).toMatchObject({ method: "GET", status: 200, err: { message: "broken behind" } });
  });
});

import { once } from "node:events";
import { request as ask } from "node:http";
import type { AddressInfo } from "node:net";
import { Writable } from "node:stream";
import { onCheckpoint } from "@sunfathom/answers";
import { itemsFor, openPaper, packageZip } from "@sunfathom/quiz";
import type { FastifyBaseLogger, FastifyInstance } from "fastify";
import { strFromU8, unzipSync } from "fflate";
import { pino } from "pino";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { instructorKey, keyring, post, quizSettings, rightAnswer } from "./quiz.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp({ quiz: quizSettings });
  await app.listen({ host: "127.0.0.1", port: 0 });
});
afterAll(() => app.close());

const paper = { level: "working", count: 12, title: "Colour & light <1>" };
const bearer = { authorization: `Bearer ${instructorKey}` };

async function packed(body: object, headers: Record<string, string> = {}) {
  const reply = await post(app, "packages", body, headers)
    .buffer(true)
    .parse((response, done) => {
      const chunks: Buffer[] = [];
      response.on("data", (chunk) => chunks.push(chunk));
      response.on("end", () => done(null, Buffer.concat(chunks)));
    })
    .expect(200);
  const files = Object.entries(unzipSync(reply.body)).map(([path, bytes]) => [path, strFromU8(bytes)]);
  return { headers: reply.headers, files: new Map(files as [string, string][]) };
}

describe("a package", () => {
  it.each([
    ["3.0", "qti-assessment-item", "qti-correct-response"],
    ["2.1", "assessmentItem", "correctResponse"],
  ])("of version %s holds every question, with its key for an instructor", async (version, root, key) => {
    const { headers, files } = await packed({ ...paper, version, with_keys: true }, bearer);
    expect(headers).toMatchObject({
      "content-type": "application/zip",
      "content-disposition": 'attachment; filename="quiz.zip"',
      "cache-control": "no-store",
    });
    const items = [...files].filter(([path]) => path.startsWith("items/"));
    expect(items).toHaveLength(12);
    for (const [, markup] of items) {
      expect(markup).toContain(`<${root} `);
      expect(markup).toContain(`<${key}>`);
    }
    expect(files.get("test.xml")).toContain('title="Colour &amp; light &lt;1&gt;"');
    expect(files.has("imsmanifest.xml")).toBe(true);
    expect(files.has("paper.json")).toBe(false);
  });

  it.each(["3.0", "2.1"])(
    "of version %s holds no key for anybody else, and the token of a test instead",
    async (version) => {
      const closes_at = new Date(Date.now() + 3600_000).toISOString();
      const { files } = await packed({ ...paper, version, release: "after_close", closes_at });
      const { token, expires } = JSON.parse(files.get("paper.json") ?? "");
      expect(Date.parse(expires)).toBeGreaterThan(Date.parse(closes_at));
      const { items, held_until } = await openPaper(token, { keyring, now_s: Date.now() / 1000 });
      expect(Math.abs(Date.parse(held_until ?? "") - Date.parse(closes_at))).toBeLessThan(1000);
      const all = [...files.values()].join("\n");
      expect(all).not.toMatch(/correct-?response|response-?processing|mapping|modal-?feedback|base-?value/i);
      for (const item of items) {
        for (const step of item.solution.steps) if (step.length > 24) expect(all).not.toContain(step);
      }
      expect(files.get("imsmanifest.xml")).toContain('<file href="paper.json"/>');
      const responses = items.map((item) => ({ item: item.id, ...rightAnswer(item) }));
      await post(app, "answers", { token, responses }).expect(403);
      const { body } = await post(app, "answers", { token, responses }, bearer).expect(200);
      expect(body).toMatchObject({ score: 12, max_score: 12 });
    },
  );

  // With the token of a practice paper any answer has its question's solution told, and learners hold the package.
  it("for practice brings no token at all", async () => {
    for (const asked of [paper, { ...paper, release: "at_once" }]) {
      const { files } = await packed(asked);
      expect(files.has("paper.json")).toBe(false);
      expect([...files.values()].join("\n")).not.toContain("sq1.");
    }
  });

  it("with keys takes no release, which it could not keep", async () => {
    const asked = { ...paper, with_keys: true, release: "after_close", closes_at: "2999-01-01T00:00:00Z" };
    const { body } = await post(app, "packages", asked, bearer).expect(400);
    expect(body).toMatchObject({
      code: "invalid_request",
      errors: [{ pointer: "/release", code: "release_without_effect" }],
    });
  });

  it("needs the instructor's key, the whole of it and nothing else", async () => {
    const wrong = [
      undefined,
      "",
      instructorKey,
      "Bearer",
      "Bearer ",
      `Basic ${instructorKey}`,
      `Bearer ${instructorKey.slice(0, -1)}`,
      `Bearer ${instructorKey}x`,
      `Bearer ${instructorKey.toUpperCase()}`,
      `Bearer x, Bearer ${instructorKey}`,
    ];
    for (const authorization of wrong) {
      const headers = authorization === undefined ? {} : { authorization };
      const reply = await post(app, "packages", { ...paper, with_keys: true }, headers).expect(401);
      expect(reply.body.code).toBe("unauthorized");
      // RFC 6750, section 3: without authentication there is no error to tell.
      expect(reply.headers["www-authenticate"]).toBe(
        `Bearer realm="instructors"${authorization === undefined ? "" : ', error="invalid_token"'}`,
      );
      expect(reply.text).not.toContain(instructorKey);
    }
    // RFC 9110, section 11.1: the scheme's name has no case.
    await post(
      app,
      "packages",
      { ...paper, with_keys: true },
      { authorization: `bearer ${instructorKey}` },
    ).expect(200);
  });

  it("with keys is refused once, in words that tell a missing key from a wrong one", async () => {
    const logged: string[] = [];
    const stream = new Writable({
      write(line, _, done) {
        logged.push(String(line));
        done();
      },
    });
    const logger: FastifyBaseLogger = pino({ level: "warn" }, stream);
    for (const [key, authorization, detail] of [
      [instructorKey, undefined, "`with_keys` needs the instructor's key."],
      [instructorKey, "Bearer wrong", "This is not the instructor's key."],
      [undefined, "Bearer wrong", "No instructor's key is configured, so nobody gets keys."],
    ]) {
      const own = await buildApp({
        logger,
        quiz: { ...quizSettings, instructorKey: key },
      });
      const headers = authorization === undefined ? {} : { authorization };
      const payload = { ...paper, with_keys: true };
      const reply = await own.inject({ method: "POST", url: "/v1/quiz-packages", headers, payload });
      expect(reply.json().detail).toBe(detail);
      await own.close();
    }
    // A second answer to a request would have its line.
    expect(logged).toEqual([]);
  });

  // RFC 7493, section 2.3: names within an object are unique.
  it("takes no query, no name twice, and no caller who wants another form", async () => {
    const own = await buildApp({ quiz: quizSettings });
    const ask = async (payload: string, { query = "", accept = "application/zip" } = {}) => {
      const headers = { "content-type": "application/json", accept };
      const reply = await own.inject({ method: "POST", url: `/v1/quiz-packages${query}`, headers, payload });
      return [reply.statusCode, reply.statusCode === 200 ? undefined : reply.json().code];
    };
    const body = JSON.stringify(paper);
    expect(await ask(body)).toEqual([200, undefined]);
    expect(await ask(body, { query: "?a=1" })).toEqual([400, "invalid_query"]);
    expect(await ask(body.replace("{", '{"count":1,'))).toEqual([400, "invalid_request"]);
    expect(await ask(body, { accept: "application/json" })).toEqual([406, "not_acceptable"]);
    await own.close();
  });

  it("with keys is not to be had from a service without an instructor's key, whatever is sent", async () => {
    const without = await buildApp({
      quiz: {
        ...quizSettings,
        instructorKey: undefined,
      },
    });
    await without.ready();
    for (const headers of [{}, bearer, { authorization: "Bearer undefined" }]) {
      const { body } = await post(without, "packages", { ...paper, with_keys: true }, headers).expect(403);
      expect(body).toMatchObject({
        code: "keys_not_offered",
        detail: expect.stringContaining("instructor's key"),
      });
    }
    await post(without, "packages", paper).expect(200);
    await without.close();
  });

  it("is given to whoever takes a zip, and to nobody else", async () => {
    await post(app, "packages", paper, { accept: "application/zip" }).expect(200);
    await post(app, "packages", paper, { accept: "application/json" }).expect(406);
    await post(app, "packages", {}, { accept: "application/zip" }).expect(400);
  });

  it("waits for whoever reads slowly", async () => {
    const { port } = app.server.address() as AddressInfo;
    const body = JSON.stringify({ ...paper, count: 200 });
    const asked = ask({
      port,
      method: "POST",
      path: "/v1/quiz-packages",
      headers: { "content-type": "application/json" },
    });
    asked.end(body);
    const [reply] = await once(asked, "response");
    const chunks: Buffer[] = [];
    for await (const chunk of reply) {
      chunks.push(chunk);
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
    const zip = Buffer.concat(chunks);
    expect(reply.headers["content-length"]).toBe(String(zip.length));
    expect(Object.keys(unzipSync(zip)).length).toBeGreaterThan(201);
  });

  it("is neither made nor packed on the thread that answers", async () => {
    let looks = 0;
    onCheckpoint(() => {
      looks += 1;
    });
    try {
      await packed({ ...paper, with_keys: true }, bearer);
      // Reading the body here takes one.
      expect(looks).toBeLessThan(paper.count);
      // What the two of them do, done here: many looks are taken.
      looks = 0;
      const items = itemsFor({ ...paper, seed: "s", level: "working", units: "metric", language: "en" });
      expect(looks).toBeGreaterThan(paper.count);
      looks = 0;
      for (const _ of packageZip(items, { version: "3.0", language: "en", title: "t", keys: true }));
      expect(looks).toBeGreaterThan(items.length);
    } finally {
      onCheckpoint(undefined);
    }
  });
});

it("the questions of a package are as many as one can ask for, and no more than there are", async () => {
  expect(() =>
    itemsFor({ ...paper, seed: "s", level: "working", units: "metric", language: "en" }),
  ).not.toThrow();
  const { body } = await post(app, "packages", { ...paper, count: 200, templates: ["kelvin_order"] }).expect(
    422,
  );
  expect(body).toMatchObject({ code: "paper_not_possible", errors: [{ pointer: "/count" }] });
});

import { brotliDecompressSync } from "node:zlib";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { written } from "./built.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
});
afterAll(() => app.close());

const { guides } = written();
const reference = ["/docs", "/docs/"];
const readable = ["/docs/guides", "/docs/guides/", ...guides.map(({ name }) => `/docs/guides/${name}`)];

/** What a page names, as a browser finds it from where the page is. */
async function namedBy(path: string, attribute: string): Promise<string[]> {
  const { body } = await app.inject({ url: path, headers: { accept: "text/html" } });
  const links = [...body.matchAll(new RegExp(`${attribute}="([^"]+)"`, "g"))].map(([, link = ""]) => link);
  return links
    .map((link) => new URL(link, `http://a.example${path}`))
    .filter(({ host }) => host === "a.example")
    .map(({ pathname }) => pathname);
}

it("is a page with a name of its own, made for narrow screens, too", async () => {
  const { headers, body } = await app.inject("/docs/");
  expect(headers["content-type"]).toContain("text/html");
  expect(/<title>(.*)<\/title>/.exec(body)?.[1]).toBe("Sunfathom: API documentation");
  expect(body).toContain('<meta name="viewport" content="width=device-width, initial-scale=1">');
});

describe("what the browser lets a page do (Content Security Policy Level 3)", () => {
  const policyOf = async (path: string) => {
    const { headers } = await app.inject({ url: path, headers: { accept: "text/html" } });
    const directives = String(headers["content-security-policy"]).split(";");
    return new Map(
      directives.map((one) => {
        const [name = "", ...sources] = one.trim().split(/\s+/);
        return [name, sources];
      }),
    );
  };

  it.each(reference)(
    "%s runs and asks what comes from here alone; it alone takes styles of its own",
    async (path) => {
      const policy = await policyOf(path);
      expect(policy.get("default-src")).toEqual(["'none'"]);
      for (const name of ["script-src", "connect-src"]) expect(policy.get(name)).toEqual(["'self'"]);
      expect(policy.get("script-src-attr")).toEqual(["'none'"]);
      expect(policy.get("style-src")).toEqual(["'self'", "'unsafe-inline'"]);
      const sources = [...policy].filter(([name]) => name !== "style-src").flatMap(([, values]) => values);
      for (const source of sources) expect(["'self'", "'none'", "data:", "blob:"]).toContain(source);
      // A service on a local network has no TLS to turn to.
      expect(policy.has("upgrade-insecure-requests")).toBe(false);
    },
  );

  it.each([...readable, "/changelog", "/problems/invalid-scene"])("%s runs nothing", async (path) => {
    const policy = await policyOf(path);
    expect(policy.get("default-src")).toEqual(["'none'"]);
    expect(policy.get("style-src")).toEqual(["'self'"]);
    expect(policy.has("script-src")).toBe(false);
  });
});

it("tells no site that its links lead to where they were followed", async () => {
  for (const path of [...reference, ...readable])
    expect((await app.inject(path)).headers["referrer-policy"]).toBe("no-referrer");
});

it.each(reference)("has everything that it loads, also from %s, each with its media type", async (path) => {
  const loaded = [...(await namedBy(path, "src")), ...(await namedBy(path, "href"))];
  const files = loaded.filter((file) => file.startsWith("/docs/static/"));
  expect(files).toHaveLength(4);
  for (const file of [...files, "/docs/static/samples.js", "/docs/static/search.js"]) {
    const { statusCode, headers, rawPayload } = await app.inject(file);
    expect([file, statusCode]).toEqual([file, 200]);
    const type = { js: "text/javascript", css: "text/css", svg: "image/svg" }[file.split(".").at(-1) ?? ""];
    expect(headers["content-type"]).toMatch(new RegExp(`^${type}`));
    expect(rawPayload.length).toBe(Number(headers["content-length"]));
    expect(rawPayload.length).toBeGreaterThan(100);
  }
});

it("loads in 400 kB, description and all, as browsers take it", async () => {
  let bytes = 0;
  const parts = [
    "openapi-explorer.min.js",
    "reference.js",
    "samples.js",
    "search.js",
    "reference.css",
    "icon.svg",
  ];
  for (const path of ["/docs", "/openapi.json", ...parts.map((part) => `/docs/static/${part}`)]) {
    const reply = await app.inject({ url: path, headers: { "accept-encoding": "gzip, deflate, br" } });
    const isPacked = reply.headers["content-encoding"] === "br";
    if (isPacked)
      expect(brotliDecompressSync(reply.rawPayload).length).toBeGreaterThan(reply.rawPayload.length);
    bytes += reply.rawPayload.length;
  }
  expect(bytes).toBeLessThan(400_000);
});

it.each([...reference, ...readable, "/changelog", "/problems/invalid-scene"])(
  "%s links to nothing here that there is not",
  async (path) => {
    const links = await namedBy(path, "href");
    expect(links.length).toBeGreaterThan(3);
    for (const link of new Set(links))
      expect([link, (await app.inject(link)).statusCode]).toEqual([link, 200]);
  },
);

it("has a guide for each thing that integrators build, and for those who run it", () => {
  expect(guides.map(({ name }) => name)).toEqual([
    "booking",
    "course",
    "trips",
    "offline",
    "pictures",
    "self-hosting",
    "sizing",
    "accuracy",
    "changes",
    "references",
  ]);
});

// RFC 9110, section 8.8.3 and 9.3.2: a strong tag; HEAD as GET, without the content.
it("sends no file again to whoever has it, and none to whoever asks for its head", async () => {
  for (const url of ["/docs", ...(await namedBy("/docs", "(?:src|href)"))]) {
    const first = await app.inject(url);
    const { etag } = first.headers;
    expect(etag).toMatch(/^"[\w-]+"$/);
    const again = await app.inject({ url, headers: { "if-none-match": String(etag) } });
    expect([again.statusCode, again.body]).toEqual([304, ""]);
    const head = await app.inject({ url, method: "HEAD" });
    expect([head.statusCode, head.body, head.headers["content-length"]]).toEqual([
      200,
      "",
      first.headers["content-length"],
    ]);
  }
});

it("has nothing of the disk beside that", async () => {
  for (const path of [
    "package.json",
    "../../../package.json",
    "%2e%2e%2fpackage.json",
    "written.json",
    "LICENSE.txt",
    "",
  ])
    expect((await app.inject(`/docs/static/${path}`)).statusCode).toBe(404);
});

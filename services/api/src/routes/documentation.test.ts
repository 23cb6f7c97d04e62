import type { FastifyInstance } from "fastify";
import { afterEach, beforeEach, expect, it } from "vitest";
import { createApp } from "../app.js";
import { unhurried } from "../unhurried.test-support.js";

let app: FastifyInstance;
beforeEach(async () => {
  app = await createApp({ limits: unhurried });
});
afterEach(() => app.close());

it("is a page with a name of its own", async () => {
  const { headers, body } = await app.inject("/docs/");
  expect(headers["content-type"]).toContain("text/html");
  expect(/<title>(.*)<\/title>/.exec(body)?.[1]).toBe("Sunfathom: API documentation");
});

it("lets the browser load nothing from elsewhere (Content Security Policy Level 3)", async () => {
  const { headers } = await app.inject("/docs/");
  const policy = String(headers["content-security-policy"]);
  const directives = policy.split(";").map((directive) => directive.trim().split(/\s+/));
  const sources = directives.flatMap(([, ...values]) => values);
  for (const source of sources) expect(["'self'", "'none'", "data:"]).toContain(source);
  const of = (name: string) => directives.find(([first]) => first === name)?.slice(1);
  expect(of("default-src")).toEqual(["'self'"]);
  for (const name of ["script-src", "style-src"]) expect(of(name)).toEqual(["'self'"]);
  for (const name of ["script-src-attr", "object-src"]) expect(of(name)).toEqual(["'none'"]);
  // A service on a local network has no TLS to turn to.
  expect(policy).not.toContain("upgrade-insecure-requests");
});

it("tells no site that its links lead to where they were followed", async () => {
  expect((await app.inject("/docs/")).headers["referrer-policy"]).toBe("no-referrer");
});

it("lists every operation, closed, without the library's own address bar and models", async () => {
  const { body } = await app.inject("/docs/static/swagger-initializer.js");
  for (const setting of ['layout: "BaseLayout"', 'docExpansion: "list"', "defaultModelsExpandDepth: 0"])
    expect(body).toContain(setting);
});

/** What the page loads, as a browser finds it from where the page is. */
async function loadedFrom(path: string): Promise<string[]> {
  const { body } = await app.inject(path);
  const links = [...body.matchAll(/(?:href|src)="([^"]+)"/g)].map(([, link = ""]) => link);
  return links.map((link) => new URL(link, `http://a.example${path}`).pathname);
}

it.each(["/docs", "/docs/"])(
  "has everything that it loads, also from %s, each with its media type",
  async (path) => {
    const loaded = await loadedFrom(path);
    expect(loaded).toHaveLength(6);
    for (const file of loaded) {
      const { statusCode, headers, rawPayload } = await app.inject(file);
      expect([file, statusCode]).toEqual([file, 200]);
      const type = { js: "text/javascript", css: "text/css", png: "image/png" }[file.split(".").at(-1) ?? ""];
      expect(headers["content-type"]).toMatch(new RegExp(`^${type}`));
      expect(rawPayload.length).toBe(Number(headers["content-length"]));
      expect(rawPayload.length).toBeGreaterThan(100);
    }
  },
);

// RFC 9110, section 8.8.3 and 9.3.2: a strong tag; HEAD as GET, without the content.
it("sends no file again to whoever has it, and none to whoever asks for its head", async () => {
  for (const url of ["/docs", ...(await loadedFrom("/docs"))]) {
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

it.each(["/docs", "/docs/", "/under/a/path/docs"])(
  "shows the description beside it, from %s",
  async (pathname) => {
    const { body } = await app.inject("/docs/static/swagger-initializer.js");
    const shown: { url: string }[] = [];
    const bundle = Object.assign((config: { url: string }) => shown.push(config), { presets: { apis: [] } });
    new Function("window", "SwaggerUIBundle", body)({ location: { pathname } }, bundle);
    expect(shown.map(({ url }) => url)).toEqual([pathname.replace(/docs\/?$/, "openapi.json")]);
  },
);

it("has nothing of the disk beside that", async () => {
  for (const path of [
    "package.json",
    "../../package.json",
    "%2e%2e%2fpackage.json",
    "swagger-ui.js",
    "csp.json",
    "",
  ])
    expect((await app.inject(`/docs/static/${path}`)).statusCode).toBe(404);
});

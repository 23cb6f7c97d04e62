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

it("lists every operation, closed, above the page's own address bar and models", async () => {
  const { body } = await app.inject("/docs/static/swagger-initializer.js");
  const config = /const config = (\{.*?\})\n/.exec(body.replaceAll("\r", ""))?.[1] ?? body;
  for (const setting of ['"layout":"BaseLayout"', '"docExpansion":"list"', '"defaultModelsExpandDepth":0'])
    expect(config).toContain(setting);
});

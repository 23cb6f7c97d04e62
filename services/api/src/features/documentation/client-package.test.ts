import { createHash } from "node:crypto";
import type { FastifyInstance } from "fastify";
import { afterEach, beforeEach, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import type { ClientPackage } from "./client-package.js";

let app: FastifyInstance;
beforeEach(async () => {
  app = await buildApp();
});
afterEach(() => app.close());

const said = async () => (await app.inject("/sdk")).json<ClientPackage>();

it("says which client belongs to the service, and gives that file", async () => {
  const { version, tarball, integrity } = await said();
  expect(tarball).toBe(`/sdk/sunfathom-sdk-${version}.tgz`);
  const { statusCode, headers, rawPayload } = await app.inject(tarball);
  expect([statusCode, headers["content-type"]]).toEqual([200, "application/gzip"]);
  // Subresource Integrity (W3C), as lock files keep it.
  expect(integrity).toBe(`sha512-${createHash("sha512").update(rawPayload).digest("base64")}`);
});

it("lets a URL with a version be kept for ever, and has the others asked for anew", async () => {
  const { tarball } = await said();
  const kept = async (path: string) => (await app.inject(path)).headers["cache-control"];
  expect(await kept(tarball)).toBe("public, max-age=31536000, immutable");
  expect(await kept("/sdk")).toBe("no-cache");
  expect(await kept("/sdk/latest")).toBe("no-cache");
});

it("gives the same file as the latest", async () => {
  const { tarball } = await said();
  const [named, latest] = [await app.inject(tarball), await app.inject("/sdk/latest")];
  expect(latest.rawPayload.equals(named.rawPayload)).toBe(true);
});

it("sends it to nobody again who has it", async () => {
  const { tarball } = await said();
  const { etag = "" } = (await app.inject(tarball)).headers;
  expect((await app.inject({ url: tarball, headers: { "if-none-match": etag } })).statusCode).toBe(304);
});

it.each(["/sdk/sunfathom-sdk-0.0.1.tgz", "/sdk/", "/sdk/../package.json", "/sdk/%2e%2e/package.json"])(
  "has no other at %s",
  async (path) => {
    expect((await app.inject(path)).statusCode).toBe(404);
  },
);

it("tells who asks for another version where the one that it has is", async () => {
  const { tarball } = await said();
  const answer = (await app.inject("/sdk/sunfathom-sdk-0.0.1.tgz")).json();
  expect(answer.code).toBe("not_found");
  expect(answer.detail).toContain(tarball);
});

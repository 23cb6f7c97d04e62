import { readFileSync } from "node:fs";
import Fastify from "fastify";
import { describe, expect, it } from "vitest";
import { buildApp } from "../build-app.test-support.js";
import { operations } from "../operations.js";
import { registerSwagger } from "./swagger.js";

interface Operation {
  tags: string[];
  security?: Record<string, string[]>[];
}
interface Document {
  openapi: string;
  info: { title: string; summary: string; description: string; version: string; license: object };
  servers: { url: string; description: string }[];
  security: object[];
  tags: { name: string; description: string }[];
  paths: Record<string, Record<string, Operation>>;
  components: {
    schemas: object;
    securitySchemes: Record<string, { type: string; scheme: string; description: string }>;
  };
}

/** The description of a service with two paths, one of which is hidden. */
async function describedThings(): Promise<Document> {
  const app = Fastify();
  await registerSwagger(app);
  app.addSchema({ $id: "Thing", type: "object" });
  app.get(
    "/v1/things",
    { schema: { tags: ["Quiz"], response: { 200: { description: "One.", $ref: "Thing#" } } } },
    () => "",
  );
  app.get("/hidden", { schema: { hide: true } }, () => "");
  await app.ready();
  return JSON.parse(JSON.stringify(app.swagger()));
}

/** The description of the whole service. */
async function describedService(): Promise<Document> {
  const app = await buildApp();
  const { body } = await app.inject("/openapi.json");
  await app.close();
  return JSON.parse(body);
}

const sentences = /^[A-Z].+\.$/s;

// https://spec.openapis.org/oas/v3.1.0: the fields and what they say.
describe("the description", () => {
  it("is OpenAPI 3.1 of this service, under the project's licence", async () => {
    const { openapi, info, servers } = await describedThings();
    expect(openapi).toBe("3.1.0");
    expect(info.title).toBe("Sunfathom");
    for (const text of [info.summary, info.description]) expect(text).toMatch(sentences);
    // It plans pictures: that it is no dive planner must be read before anything else.
    expect(info.description).toContain("no advice on depth, gas or decompression");
    const root = (file: string) => readFileSync(new URL(`../../../../${file}`, import.meta.url), "utf8");
    expect(root("LICENSE")).toContain("Apache License");
    // The SPDX list has it under this name.
    expect(info.license).toEqual({ name: "Apache-2.0", identifier: "Apache-2.0" });
    expect(info.version).toMatch(/^\d+\.\d+\.\d+$/);
    // A relative URL is of where the description came from.
    expect(servers).toEqual([{ url: "/", description: expect.stringMatching(sentences) }]);
  });

  it("has what is not hidden, and components under their own names", async () => {
    const { paths, components } = await describedThings();
    expect(Object.keys(paths)).toEqual(["/v1/things"]);
    expect(components.schemas).toHaveProperty("Thing");
    expect(JSON.stringify(paths)).toContain("#/components/schemas/Thing");
  });

  it("explains every tag that an operation bears, and no other", async () => {
    const { tags, paths } = await describedService();
    const borne = Object.values(paths).flatMap((path) => Object.values(path).flatMap((one) => one.tags));
    expect(new Set(tags.map(({ name }) => name))).toEqual(new Set(borne));
    expect(new Set(tags.map(({ name }) => name)).size).toBe(tags.length);
    for (const { description } of tags) expect(description).toMatch(sentences);
    for (const { path } of operations) expect(paths[path]?.["post"]?.tags).toEqual(["Calculations"]);
  });

  // RFC 6750: a key in Authorization, after Bearer.
  it("asks for no key, but where an operation names one that it explains", async () => {
    const { security, paths, components } = await describedService();
    expect(security).toEqual([]);
    const named = Object.values(paths).flatMap((path) =>
      Object.values(path).flatMap((one) => (one.security ?? []).flatMap(Object.keys)),
    );
    expect(named.length).toBeGreaterThan(0);
    for (const name of named)
      expect(components.securitySchemes[name]).toEqual({
        type: "http",
        scheme: "bearer",
        description: expect.stringMatching(sentences),
      });
    expect(Object.keys(components.securitySchemes).sort()).toEqual([...new Set(named)].sort());
  });
});

import { readFileSync } from "node:fs";
import { references } from "@sunfathom/answers";
import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../build-app.test-support.js";
import { drawable } from "../features/pictures/draw.js";
import { instructorKey, quizSettings } from "../features/quiz/quiz.test-support.js";
import { sheetOperations } from "../features/sheets/index.js";
import { tripOperations } from "../features/trips/index.js";
import { operations } from "../operations.js";
import { isObject, type Json, type JsonObject } from "./json.js";
import { descriptionText } from "./text.js";

const committed = readFileSync(new URL("../../../../openapi/openapi.json", import.meta.url), "utf8");

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp({ quiz: quizSettings });
  await app.ready();
});
afterAll(() => app.close());

type Operation = JsonObject & { operationId: string; responses: Record<string, JsonObject> };
const document: JsonObject & { paths: Record<string, Record<string, Operation>> } = JSON.parse(committed);
const all = Object.entries(document.paths).flatMap(([path, methods]) =>
  Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
);

describe("the description", () => {
  it("is committed as the routes make it", () => {
    const same = committed === descriptionText(app);
    expect(same, "run `npm run generate` and commit what it wrote").toBe(true);
  });

  it("is served as it is committed, with a tag", async () => {
    const response = await request(app.server).get("/openapi.json").expect(200);
    expect(response.text).toBe(committed);
    const etag = response.headers["etag"] ?? "";
    await request(app.server).get("/openapi.json").set("If-None-Match", etag).expect(304);
  });

  it("has every operation of the tables, calculations twice and marked as safe", () => {
    for (const { path, postId, getId } of operations) {
      expect(document.paths[path]?.["post"]).toMatchObject({ operationId: postId, "x-safe": true });
      expect(document.paths[path]?.["get"]).toMatchObject({ operationId: getId, "x-safe": true });
    }
    for (const { path, id } of references) expect(document.paths[path]?.["get"]?.operationId).toBe(id);
  });

  it("gives every operation a name of its own, a summary and its problems", () => {
    expect(new Set(all.map(({ operation }) => operation.operationId)).size).toBe(all.length);
    for (const { operation } of all) {
      expect(operation["summary"]).toBeTruthy();
      expect(Object.keys(operation.responses)).toEqual(
        expect.arrayContaining(["200", "400", "500", "default"]),
      );
    }
  });

  it("gives every POST examples that it answers", async () => {
    const posts = all.filter(({ method }) => method === "post");
    expect(posts).toHaveLength(
      operations.length + drawable.length + sheetOperations.length + tripOperations.length + 4,
    );
    const asked = Object.fromEntries(posts.map((post) => [post.operation.operationId, examplesOf(post)]));
    for (const { path, operation } of posts) {
      const examples = asked[operation.operationId] ?? [];
      expect(examples.length).toBeGreaterThan(0);
      for (const [nth, value] of examples.entries()) {
        const { body } = await request(app.server)
          .post(path)
          .set("Authorization", `Bearer ${instructorKey}`)
          .send(value)
          .expect(200);
        if (nth > 0) continue;
        // What an example takes from another answer comes from there, as the description's links say.
        for (const link of linksOf(operation)) {
          for (const target of asked[link.operationId] ?? []) Object.assign(target, { token: body.token });
        }
      }
    }
  });

  it("says which answer a token comes from, where it goes, and which key packages take", () => {
    const drawing = document.paths["/v1/quiz-items"]?.["post"];
    expect(linksOf(drawing ?? {})).toMatchObject([
      { operationId: "markAnswers", requestBody: { token: "$response.body#/token" } },
    ]);
    const packing = document.paths["/v1/quiz-packages"]?.["post"];
    expect(packing?.["security"]).toEqual([{ instructorKey: [] }, {}]);
    expect(document["components"]).toMatchObject({
      securitySchemes: { instructorKey: { type: "http", scheme: "bearer" } },
    });
    for (const operation of [drawing, packing]) expect(operation?.["x-safe"]).toBe(false);
  });

  it("leads nowhere that there is nothing", () => {
    const broken = referencesIn(document).filter((reference) => at(document, reference) === undefined);
    expect(broken).toEqual([]);
  });

  it("is open to questions at /docs, which loads nothing from elsewhere", async () => {
    const page = await request(app.server).get("/docs").expect(200);
    const links = [...page.text.matchAll(/(?:src|href)="([^"]+)"/g)].map(([, link = ""]) => link);
    expect(links.length).toBeGreaterThan(3);
    for (const link of links) {
      const { origin, pathname } = new URL(link, "http://service.invalid/docs");
      expect(origin).toBe("http://service.invalid");
      await request(app.server).get(pathname).expect(200);
    }
    expect(page.headers["content-security-policy"]).toContain("default-src 'none'");
    const script = await request(app.server).get("/docs/static/reference.js").expect(200);
    expect(script.text).not.toMatch(/https?:\/\//);
    // The page shows the description that everybody gets.
    expect(script.text).toContain("openapi.json");
    const shown = await request(app.server).get("/openapi.json").expect(200);
    expect(shown.body).toEqual(JSON.parse(committed));
    await request(app.server).get("/").expect(302).expect("location", "/docs");
  });
});

interface Link {
  operationId: string;
}

function linksOf(operation: object): Link[] {
  const { responses } = operation as { responses?: Record<string, { links?: Record<string, Link> }> };
  return Object.values(responses?.["200"]?.links ?? {});
}

function examplesOf({ operation }: { operation: Operation }): object[] {
  const { content } = operation["requestBody"] as {
    content: Record<string, { examples: Record<string, { value: object }> }>;
  };
  return Object.values(content["application/json"]?.examples ?? {}).map(({ value }) => value);
}

function referencesIn(value: Json): string[] {
  if (Array.isArray(value)) return value.flatMap(referencesIn);
  if (!isObject(value)) return [];
  return Object.entries(value).flatMap(([key, item]) =>
    key === "$ref" && typeof item === "string" ? [item] : referencesIn(item),
  );
}

function at(root: Json, reference: string): Json | undefined {
  const names = reference.replace(/^#\//, "").split("/");
  return names.reduce<Json | undefined>((value, name) => (isObject(value) ? value[name] : undefined), root);
}

import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../build-app.test-support.js";
import { drawable } from "../features/pictures/draw.js";
import { sheetOperations } from "../features/sheets/index.js";
import { tripOperations } from "../features/trips/index.js";
import { answerName, answersFile, answersKept } from "./answers-kept.js";
import type { Json } from "./json.js";
import { undrawn } from "./real-answers.js";
import { shorten } from "./shorten.js";

interface Operation {
  parameters?: ({ name: string; example?: unknown } | { $ref: string })[];
  responses: Record<string, { content: Record<string, { examples?: Record<string, { $ref: string }> }> }>;
}
interface Document {
  paths: Record<string, Record<string, Operation>>;
  components: { parameters: Record<string, { name: string; example?: unknown }>; examples: object };
}

let app: FastifyInstance;
let document: Document;
beforeAll(async () => {
  app = await buildApp();
  document = (await app.inject("/openapi.json")).json();
});
afterAll(() => app.close());

it("the answers are those that the service gives now, written alike each time", () => {
  const folder = mkdtempSync(join(tmpdir(), "answers-"));
  const script = fileURLToPath(new URL("../../dist/openapi/write-answers.js", import.meta.url));
  const { status, stderr } = spawnSync(process.execPath, [script, join(folder, "answers.json")], {
    encoding: "utf8",
  });
  expect([status, stderr]).toEqual([0, ""]);
  const same = readFileSync(join(folder, "answers.json"), "utf8") === readFileSync(answersFile, "utf8");
  rmSync(folder, { recursive: true });
  expect(same, "run `npm run generate` and commit what it wrote").toBe(true);
});

describe("the description", () => {
  it("shows an answer for every operation, and none that nothing shows", () => {
    const shown = Object.entries(document.paths).flatMap(([path, methods]) =>
      Object.values(methods).map(({ responses }) => {
        const [media] = Object.values(responses["200"]?.content ?? {});
        const name = answerName(path);
        expect(media?.examples).toEqual({ [name]: { $ref: `#/components/examples/${name}` } });
        return name;
      }),
    );
    expect(shown).toHaveLength(26 + 2 * drawable.length + sheetOperations.length + tripOperations.length);
    expect(document.components.examples).toEqual(answersKept());
    expect(new Set(shown)).toEqual(new Set(Object.keys(answersKept())));
  });

  it("fills in the parameters of every calculation with a scene that gets the answer shown", async () => {
    const filled = Object.entries(document.paths).flatMap(([path, { get }]) => {
      const examples = (get?.parameters ?? []).flatMap((given) => {
        const one =
          "$ref" in given ? document.components.parameters[given.$ref.split("/").at(-1) ?? ""] : given;
        return one?.example === undefined ? [] : [[one.name, String(one.example)]];
      });
      return examples.length === 0 ? [] : [{ path, query: String(new URLSearchParams(examples)) }];
    });
    expect(filled).toHaveLength(8 + drawable.length);
    for (const { path, query } of filled) {
      const reply = await app.inject(`${path}?${query}`);
      expect([path, reply.statusCode]).toEqual([path, 200]);
      const isPicture = path.startsWith("/v1/pictures/");
      const answer: Json = isPicture ? undrawn(reply.payload) : shorten(reply.json()).value;
      expect(answer).toEqual(answersKept()[answerName(path)]?.value);
    }
  });
});

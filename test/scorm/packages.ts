// Practice packages as the service gives them, and the same papers to be marked by it: an instructor's seed draws both.

import type { FastifyInstance } from "fastify";
import { strFromU8, unzipSync } from "fflate";
import type { ItemResponse } from "../../packages/quiz/src/grade/grade-paper.js";
import type { Item } from "../../packages/quiz/src/index.js";
import { buildApp } from "../../services/api/src/build-app.test-support.js";
import { defaultQuizSettings } from "../../services/api/src/config/quiz-settings.js";

const instructorKey = "a-key-of-these-tests-alone";
const headers = { authorization: `Bearer ${instructorKey}`, "content-type": "application/json" };

export interface Asked {
  level: string;
  count: number;
  seed: string;
  [field: string]: unknown;
}

export async function startService(): Promise<FastifyInstance> {
  const app = await buildApp({
    limits: { costPerWindow: 1e9 },
    quiz: { ...defaultQuizSettings, instructorKey },
  });
  await app.ready();
  return app;
}

export async function zipOf(app: FastifyInstance, asked: Asked): Promise<Buffer> {
  const payload = { title: "Colour under water", format: "scorm_1_2", with_keys: true, ...asked };
  const reply = await app.inject({ method: "POST", url: "/v1/quiz-packages", headers, payload });
  if (reply.statusCode !== 200) throw new Error(reply.payload);
  return reply.rawPayload;
}

export interface Practice {
  files: ReadonlyMap<string, Uint8Array>;
  /** The questions as the package holds them, keys and all. */
  items: Item[];
  page: string;
}

export function opened(zip: Buffer): Practice {
  const files = new Map(Object.entries(unzipSync(zip)));
  const page = strFromU8(files.get("index.html") ?? new Uint8Array());
  const data = /<script type="application\/json" id="paper">(.*?)<\/script>/s.exec(page)?.[1] ?? "";
  const { items } = JSON.parse(data) as { items: { item: Item }[] };
  return { files, page, items: items.map(({ item }) => item) };
}

export interface Marks {
  score: number;
  max_score: number;
  unanswered: string[];
  grades: { item: string; score: number; feedback: { text: string }[]; solution?: { steps: string[] } }[];
}

/** What the service marks the same paper with, whose questions come from another call. */
export async function marksOf(
  app: FastifyInstance,
  asked: Asked,
  responses: readonly ItemResponse[],
): Promise<Marks> {
  const drawn = await app.inject({ method: "POST", url: "/v1/quiz-items", headers, payload: asked });
  const { token } = drawn.json() as { token: string };
  const payload = { token, responses };
  const reply = await app.inject({ method: "POST", url: "/v1/quiz-answers", payload });
  if (reply.statusCode !== 200) throw new Error(reply.payload);
  return reply.json() as Marks;
}

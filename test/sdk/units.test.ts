// Texts in feet are the same by way of the service and offline, in every language.
import type { createApp } from "@sunfathom/api";
import { afterAll, beforeAll, expect, it } from "vitest";
import { languages, sceneExamples } from "../../packages/contract/src/index.js";
import { memoryCache, Sunfathom } from "../../packages/sdk/src/index.js";
import { OfflineSunfathom } from "../../packages/sdk/src/offline/index.js";
import { diveAdvice, offlineWith } from "../../packages/sdk/src/offline/parts.js";
import { buildApp } from "../../services/api/src/build-app.test-support.js";

let app: Awaited<ReturnType<typeof createApp>>;
let baseUrl: string;
beforeAll(async () => {
  app = await buildApp();
  baseUrl = await app.listen({ host: "127.0.0.1", port: 0 });
});
afterAll(() => app.close());

const { scene } = sceneExamples.outer_reef_morning;

it.each(languages)("a plan in feet is the same online and offline, in %s", async (language) => {
  const asked = { ...scene, units: "imperial" } as const;
  const online = new Sunfathom({ baseUrl, language, cache: memoryCache() });
  const metric = await online.calculations.diveAdvice(scene);
  const imperial = await online.calculations.diveAdvice(asked);
  expect(imperial.summary).not.toBe(metric.summary);
  expect(imperial.summary_parts).toEqual(metric.summary_parts);
  for (const client of [new OfflineSunfathom({ language }), offlineWith([diveAdvice], { language })])
    expect(await client.calculations.diveAdvice(asked)).toEqual(imperial);
});

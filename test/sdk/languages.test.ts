// Each language is the same by way of the service and offline, for answers and for problems, and whoever asks for it.
import type { createApp } from "@sunfathom/api";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { languages, sceneExamples } from "../../packages/contract/src/index.js";
import { memoryCache, type ProblemError, Sunfathom } from "../../packages/sdk/src/index.js";
import { OfflineSunfathom } from "../../packages/sdk/src/offline/index.js";
import { exposureLoss, offlineWith, ready } from "../../packages/sdk/src/offline/parts.js";
import { buildApp } from "../../services/api/src/build-app.test-support.js";

let app: Awaited<ReturnType<typeof createApp>>;
let baseUrl: string;
beforeAll(async () => {
  app = await buildApp();
  baseUrl = await app.listen({ host: "127.0.0.1", port: 0 });
});
afterAll(() => app.close());

const { scene } = sceneExamples.reef_with_lamps;
const bad = { water_type: "IB", depth_m: 12, sun_elevation_deg: 0 } as const;

describe.each(languages)("in %s", (language) => {
  it("an answer is the same online, by a kept tag, and offline", async () => {
    const offline = await new OfflineSunfathom({ language }).calculations.exposureLoss(scene);
    const cache = memoryCache();
    // One cache for all, as a page that changes its language has.
    for (const one of [...languages, language]) {
      const client = new Sunfathom({ baseUrl, cache, language: one });
      const { data } = await client.calculations.exposureLoss(scene).withResponse();
      if (one === language) expect(data).toEqual(offline);
      else expect(data.cautions).not.toEqual(offline.cautions);
    }
    expect(await offlineWith([exposureLoss], { language }).calculations.exposureLoss(scene)).toEqual(offline);
  });

  it("a problem is the same online and offline", async () => {
    const problemOf = (client: Pick<OfflineSunfathom, "calculations">) =>
      client.calculations.attenuation(bad).then(
        () => undefined,
        ({ title, detail, errors }: ProblemError) => ({ title, detail, errors }),
      );
    const [online, offline] = [new Sunfathom({ baseUrl, language }), new OfflineSunfathom({ language })];
    expect(await problemOf(offline)).toEqual(await problemOf(online));
  });

  it("a scene's own language comes before the client's", async () => {
    const asked = { ...scene, language };
    const [first = "en"] = languages.filter((other) => other !== language);
    const { cautions } = await new OfflineSunfathom({ language }).calculations.exposureLoss(scene);
    for (const client of [
      new OfflineSunfathom({ language: first }),
      new Sunfathom({ baseUrl, language: first }),
    ])
      expect((await client.calculations.exposureLoss(asked)).cautions).toEqual(cautions);
  });
});

it("a language that there is not is refused by name", async () => {
  const language = "tlh" as "en";
  await expect(ready(language)).rejects.toThrow(/"tlh".*en, de, es/);
  await expect(offlineWith([exposureLoss], { language }).calculations.exposureLoss(scene)).rejects.toThrow(
    TypeError,
  );
});

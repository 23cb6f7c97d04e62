// A deploy that goes from one version of the model to the next while both answer: behind a proxy that sends every request to the other one
// of two replicas, no caller gets what belongs to neither, or to the other.
import { once } from "node:events";
import { createServer, request, type Server } from "node:http";
import { modelVersion } from "@sunfathom/answers";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ModelVersionMismatchError, memoryCache, Sunfathom } from "../../packages/sdk/src/index.js";
import { buildNextModel, nextVersion } from "./next-model.js";
import { type Service, start } from "./service.js";

const versions = [modelVersion, nextVersion];
const scene = {
  visibility_m: 25,
  water_hue: "blue",
  sun_elevation_deg: 50,
  min_depth_m: 5,
  max_depth_m: 18,
} as const;
const query = "visibility_m=25&water_hue=blue&sun_elevation_deg=50&min_depth_m=5&max_depth_m=18";
// Both seal with the first and open with each, as replicas do that share their settings.
const environment = { QUIZ_KEYS: `now:${"00ff1e2d3c4b5a69".repeat(4)}`, WORKERS: "1" };

let services: Service[];
let proxy: Server;
let baseUrl: string;
let remove: () => void;
/** Which of the two has answered, in the order of the answers. */
let served: number[] = [];

beforeAll(async () => {
  const next = buildNextModel();
  remove = next.remove;
  services = await Promise.all([start(environment), start(environment, "ignore", undefined, next.root)]);
  let turn = 0;
  proxy = createServer((asked, reply) => {
    const nth = turn++ % 2;
    const { method, url, headers } = asked;
    const sent = request({ port: services[nth]?.port, method, path: url, headers }, (answer) => {
      served.push(nth);
      reply.writeHead(answer.statusCode ?? 502, answer.headers);
      answer.pipe(reply);
    });
    asked.pipe(sent);
  }).listen(0, "127.0.0.1");
  await once(proxy, "listening");
  const address = proxy.address();
  baseUrl = `http://127.0.0.1:${typeof address === "object" ? address?.port : ""}`;
});
afterAll(async () => {
  proxy.close();
  for (const { process, ended } of services) {
    process.kill("SIGKILL");
    await ended;
  }
  remove();
});

/** Of one replica. */
const ask = (nth: number, path: string, init: RequestInit = {}) =>
  fetch(`http://127.0.0.1:${services[nth]?.port}${path}`, init);
const post = (nth: number, path: string, body: object) =>
  ask(nth, path, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });

describe("two versions of the model behind one address", () => {
  it("answer with figures of their own, and say which version's they are", async () => {
    const answers = await Promise.all(
      versions.map(async (_, nth) => (await ask(nth, `/v1/attenuation?${query}`)).json()),
    );
    expect(answers.map(({ model }) => model.version)).toEqual(versions);
    const [one, other] = answers.map((answer) => JSON.stringify({ ...answer, model: {} }));
    expect(one).not.toBe(other);
  });

  it("give a client that expects one of them that one alone, and refuse it by the other", async () => {
    const client = new Sunfathom({ baseUrl, expectModelVersion: modelVersion });
    served = [];
    const got: unknown[] = [];
    for (let round = 0; round < 6; round += 1) {
      const answer = await client.calculations
        .attenuation({ ...scene, wind_speed_m_s: 3 + round })
        .catch((error) => error);
      got.push(answer instanceof Error ? answer.constructor : answer.model.version);
    }
    expect(new Set(served)).toEqual(new Set([0, 1]));
    expect(got).toEqual(served.map((nth) => (nth === 0 ? modelVersion : ModelVersionMismatchError)));
    const refused = await post(1, "/v1/attenuation", { ...scene, expect_model_version: modelVersion });
    expect(refused.status).toBe(409);
    expect(refused.headers.get("cache-control")).toBe("no-store");
    expect(await refused.json()).toMatchObject({
      code: "model_version_mismatch",
      detail: expect.stringContaining(nextVersion),
    });
  });

  it.each([
    `/v1/attenuation?${query}`,
    `/v1/attenuation?${query}&fields=brief`,
    `/v1/pictures/light-with-depth?${query}`,
    "/v1/models",
    "/openapi.json",
  ])("never take each other's tag for their own: %s", async (path) => {
    const tags = await Promise.all(
      versions.map(async (_, nth) => String((await ask(nth, path)).headers.get("etag"))),
    );
    // What no model decides is the same, with the same tag.
    if (path === "/openapi.json") expect(tags[0]).toBe(tags[1]);
    else expect(tags[0]).not.toBe(tags[1]);
    for (const [whose, tag] of tags.entries())
      for (const nth of versions.keys()) {
        const { status } = await ask(nth, path, { headers: { "if-none-match": tag } });
        expect([path, whose, nth, status]).toEqual([path, whose, nth, tag === tags[nth] ? 304 : 200]);
      }
  });

  it("are told apart by a client's cache, whichever of them confirms what it has", async () => {
    const client = new Sunfathom({ baseUrl, cache: memoryCache() });
    served = [];
    const seen: string[] = [];
    for (let round = 0; round < 12; round += 1) {
      const { model } = await client.calculations.filterChoice(scene);
      seen.push(model.version);
    }
    expect(new Set(served)).toEqual(new Set([0, 1]));
    expect(seen).toEqual(served.map((nth) => versions[nth]));
  });

  it("mark each other's papers where the questions are the same, and refuse those whose keys have moved", async () => {
    // Arithmetic of densities stays as it is; what water leaves of red does not.
    const same = { level: "working", count: 2, templates: ["densities_stack"] };
    const moved = { level: "working", count: 4, templates: ["red_left"] };
    for (const [drawn, marked] of [
      [0, 1],
      [1, 0],
    ] as const) {
      const paper = await (await post(drawn, "/v1/quiz-items", same)).json();
      expect(paper.model_version).toBe(versions[drawn]);
      const marks = await post(marked, "/v1/quiz-answers", { token: paper.token, responses: [] });
      expect([marks.status, (await marks.json()).model_version]).toEqual([200, versions[drawn]]);
      const other = await (await post(drawn, "/v1/quiz-items", moved)).json();
      const refused = await post(marked, "/v1/quiz-answers", { token: other.token, responses: [] });
      expect(await refused.json()).toMatchObject({
        code: "questions_changed",
        errors: [{ pointer: "/token", parameters: { model_version: versions[drawn] } }],
      });
      const own = await post(drawn, "/v1/quiz-answers", { token: other.token, responses: [] });
      expect(own.status).toBe(200);
    }
  });

  it("answer a batch by one version alone, and refuse one that expects the other before its first line", async () => {
    const batch = { operation: "attenuation", scene, vary: [{ wind_speed_m_s: [2, 4, 6, 8, 10, 12] }] };
    for (const [nth, version] of versions.entries()) {
      const lines = (await (await post(nth, "/v1/batches", batch)).text())
        .trim()
        .split("\n")
        .map((line) => JSON.parse(line));
      const answers = lines.flatMap(({ answer }) => (answer === undefined ? [] : [answer.model.version]));
      expect(answers).toEqual(Array.from({ length: 6 }, () => version));
      const refused = await post(nth, "/v1/batches", { ...batch, expect_model_version: versions[1 - nth] });
      expect([refused.status, (await refused.json()).code]).toEqual([409, "model_version_mismatch"]);
    }
  });
});

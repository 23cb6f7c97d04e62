// The client against the real service: what it hands on is what a POST answers, and what it computes offline is the same
// to the byte. Operations are taken from the client, so that a new one is held to this by being there.
import { readFileSync } from "node:fs";
import { build } from "@sunfathom/answers";
import type { createApp } from "@sunfathom/api";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Call, memoryCache, type ProblemError, Sunfathom } from "../../packages/sdk/src/index.js";
import { modelVersion, OfflineSunfathom } from "../../packages/sdk/src/offline/index.js";
import { buildApp } from "../../services/api/src/build-app.test-support.js";
import { scenesAsSent } from "../support/scenes-as-sent.js";

type Calculate = (scene: object) => Call<object>;
type Read = () => Call<object>;

let app: Awaited<ReturnType<typeof createApp>>;
let baseUrl: string;
let online: Sunfathom;
let caching: Sunfathom;
const offline = new OfflineSunfathom();

beforeAll(async () => {
  app = await buildApp();
  baseUrl = await app.listen({ host: "127.0.0.1", port: 0 });
  online = new Sunfathom({ baseUrl });
  caching = new Sunfathom({ baseUrl, cache: memoryCache() });
});
afterAll(() => app.close());

const methodsOf = (group: object) =>
  Object.getOwnPropertyNames(Object.getPrototypeOf(group)).filter((name) => name !== "constructor");
const calculations = methodsOf(offline.calculations);
const references = methodsOf(offline.reference);

/** A method of a group, by its name. */
function method<Method>(group: object, name: string): Method {
  const found = Reflect.get(group, name);
  if (typeof found !== "function") throw new Error(`There is no method ${name}.`);
  return found.bind(group);
}

/** `/v1/filter-choice` for `filterChoice`. */
const pathOf = (name: string) => `/v1/${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;

const description = JSON.parse(readFileSync(new URL("../../openapi/openapi.json", import.meta.url), "utf8"));

/** What a calculation is asked: the examples of its description and, where it takes a scene of a dive, the six scenes. */
function asked(name: string): Record<string, object> {
  const { schema, examples } = description.paths[pathOf(name)].post.requestBody.content["application/json"];
  const described = Object.entries<{ value: object }>(examples).map(([key, { value }]) => [key, value]);
  return { ...Object.fromEntries(described), ...(schema.$ref.endsWith("/Scene") ? scenesAsSent : {}) };
}

async function posted(name: string, scene: object): Promise<string> {
  const response = await fetch(baseUrl + pathOf(name), {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(scene),
  });
  return response.text();
}

it("there are calculations and reference data to hold to this", () => {
  expect(calculations).toEqual(
    expect.arrayContaining(["attenuation", "filterChoice", "exposureLoss", "mixedLight"]),
  );
  expect(references).toEqual(["waterTypes", "filterKinds", "models"]);
});

describe.each(calculations)("%s", (name) => {
  it.each(Object.entries(asked(name)))(
    "answers %s as a POST does, online and offline",
    async (_name, scene) => {
      const bytes = await posted(name, scene);
      expect(JSON.parse(bytes)).toHaveProperty("model.version", modelVersion);
      const { data, meta } = await method<Calculate>(online.calculations, name)(scene).withResponse();
      expect(JSON.stringify(data)).toBe(bytes);
      expect(meta).toMatchObject({ source: "service", attempts: 1, requestId: expect.any(String) });
      const here = await method<Calculate>(offline.calculations, name)(scene).withResponse();
      expect(JSON.stringify(here.data)).toBe(bytes);
      expect(here.meta).toEqual({ source: "offline", attempts: 1 });
    },
  );

  it("is confirmed by its tag, without computing again", async () => {
    const fits = Object.values(asked(name)).find((scene) =>
      Object.values(scene).every((v) => typeof v !== "object"),
    );
    if (fits === undefined) throw new Error("No example fits a query string.");
    const ask = () => method<Calculate>(caching.calculations, name)(fits);
    const first = await ask().withResponse();
    const second = await ask().withResponse();
    expect([first.meta.source, second.meta.source]).toEqual(["service", "cache"]);
    expect(second.meta.etag).toMatch(/^"/);
    expect(second.data).toEqual(first.data);
  });
});

describe.each(references)("%s", (name) => {
  it("is the same online and offline", async () => {
    const data = await method<Read>(online.reference, name)();
    expect(JSON.stringify(await method<Read>(offline.reference, name)())).toBe(JSON.stringify(data));
  });
});

describe("a scene that cannot be answered", () => {
  const wrong: Record<string, object> = {
    "with a misspelt name": { water_type: "IB", dept_m: 12 },
    "with values out of range": { water_type: "1B", depth_m: -1, iso: Number.NaN },
    "outside the model": { water_type: "IB", depth_m: 12, sun_elevation_deg: 0 },
    "for another model": { water_type: "IB", depth_m: 12, expect_model_version: "1999.1.1" },
    "with half a group": { water_type: "IB", depth_m: 12, lamp_flux_lm: 4000, filter_kind: "red" },
  };

  const problem = async (client: Sunfathom | OfflineSunfathom, scene: unknown): Promise<ProblemError> => {
    const { calculations } = client;
    const call: Promise<unknown> = Reflect.apply(calculations.attenuation, calculations, [scene]);
    const answered = await call.catch((error: unknown) => error);
    if (answered instanceof Error && "errors" in answered) return answered as ProblemError;
    throw new Error(`no problem: ${JSON.stringify(answered)}`);
  };

  const plain = ({ name, type, title, status, code, detail, errors }: ProblemError) => ({
    name,
    type,
    title,
    status,
    code,
    detail,
    errors,
  });

  it.each(Object.entries(wrong))(
    "%s is the same problem online, offline and as a GET",
    async (_how, scene) => {
      const said = await problem(online, scene);
      expect(said.name).toMatch(/^(InvalidScene|OutsideTheModel|ModelVersionMismatch)Error$/);
      expect(plain(await problem(offline, scene))).toEqual(plain(said));
      expect(plain(await problem(caching, scene))).toEqual(plain(said));
      expect(said.requestId).toEqual(expect.any(String));
    },
  );

  it.each([[undefined], [null], ["IB"], [7], [[]], [() => 7]])(
    "that is no object, %s, is the same problem online and offline",
    async (scene) => {
      const said = await problem(online, scene);
      expect(said.errors).toEqual([expect.objectContaining({ pointer: "", code: "wrong_type" })]);
      expect(plain(await problem(offline, scene))).toEqual(plain(said));
    },
  );

  it("says the nearest right name", async () => {
    const said = await problem(online, wrong["with a misspelt name"] ?? {});
    expect(said.errors.find(({ pointer }) => pointer === "/dept_m")?.did_you_mean).toBe("depth_m");
  });
});

describe("a version of the model that is expected", () => {
  it.each(["online", "offline"])("is asked for with every scene, %s", async (where) => {
    const clientFor = (expectModelVersion: string) =>
      where === "online"
        ? new Sunfathom({ baseUrl, expectModelVersion })
        : new OfflineSunfathom({ expectModelVersion });
    const scene = { water_type: "IB", depth_m: 12 } as const;
    const answer = await clientFor(modelVersion).calculations.attenuation(scene);
    expect(answer.model.version).toBe(modelVersion);
    await expect(clientFor("1999.1.1").calculations.attenuation(scene)).rejects.toMatchObject({
      name: "ModelVersionMismatchError",
      status: 409,
    });
  });
});

describe("what only a service can say", () => {
  it("is said online, and refused offline", async () => {
    expect(await online.service.readiness()).toEqual({ status: "ready", build });
    expect((await online.service.problemKind("invalid-scene")).type).toBe("/problems/invalid-scene");
    await expect(offline.service.readiness()).rejects.toMatchObject({ name: "NotOfflineError" });
    await expect(online.service.problemKind("no-such")).rejects.toMatchObject({ name: "NotFoundError" });
  });

  it("and an aborted call is aborted offline too", async () => {
    const call = offline.reference.models({ signal: AbortSignal.abort() });
    await expect(call).rejects.toMatchObject({ name: "AbortedError" });
  });
});

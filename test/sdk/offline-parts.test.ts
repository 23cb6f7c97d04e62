// Clients made from parts of the offline mode, bundled from the package as it is published: each alone gives the bytes that
// the service sends, and the errors that the other clients give.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { createApp } from "@sunfathom/api";
import { afterAll, beforeAll, describe, expect, expectTypeOf, it } from "vitest";
import { problemType, sceneProblemStatuses } from "../../packages/contract/src/index.js";
import { problemErrors } from "../../packages/sdk/src/generated/problem-table.js";
import { type Api, type ApiOf, Sunfathom } from "../../packages/sdk/src/index.js";
import { OfflineSunfathom } from "../../packages/sdk/src/offline/index.js";
import {
  filterChoice,
  modelVersion,
  offlineWith,
  waterTypes,
  whiteBalance,
} from "../../packages/sdk/src/offline/parts.js";
import { sceneProblemErrors } from "../../packages/sdk/src/offline/refusal-error.js";
import { layPackage, pageOf } from "../../packages/sdk/src/proof/bundle.test-support.js";
import { buildApp } from "../../services/api/src/build-app.test-support.js";

let app: Awaited<ReturnType<typeof createApp>>;
let baseUrl: string;
let folder: string;
beforeAll(async () => {
  app = await buildApp();
  baseUrl = await app.listen({ host: "127.0.0.1", port: 0 });
  folder = mkdtempSync(join(tmpdir(), "parts-"));
  await layPackage(folder);
});
afterAll(async () => {
  await app.close();
  rmSync(folder, { recursive: true });
});

const whole = new OfflineSunfathom();
const methodsOf = (group: object) =>
  Object.getOwnPropertyNames(Object.getPrototypeOf(group)).filter((name) => name !== "constructor");

/** `/v1/filter-choice` for `filterChoice`. */
const pathOf = (name: string) => `/v1/${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
const description = JSON.parse(readFileSync(new URL("../../openapi/openapi.json", import.meta.url), "utf8"));

/** The examples that the description has of a calculation's scene. */
function examplesOf(name: string): [string, object][] {
  const { examples } = description.paths[pathOf(name)].post.requestBody.content["application/json"];
  return Object.entries<{ value: object }>(examples).map(([key, { value }]) => [key, value]);
}

type Calculate = (scene: object) => Promise<object>;

/** The one method of a client that a page has with one part of the published package, and no other code of it. */
async function alone(group: string, name: string): Promise<Calculate> {
  const { client } = await onPage(name);
  expect(Object.keys(client)).toEqual([group]);
  expect(Object.keys(client[group])).toEqual([name]);
  return client[group][name];
}

/** When a page loads a file: before it runs, or behind that, for refusals, for what only some scenes need, or where one says more than most. */
type When = "start" | "later" | "rest" | "wider";

const pages = new Map<string, ReturnType<typeof pageOf>>();

/** A page with one part, which is packed once. */
function packed(name: string): ReturnType<typeof pageOf> {
  const program = `import { offlineWith, ready, ${name} } from "@sunfathom/sdk/offline/parts"; export const client = offlineWith([${name}]); export { ready };`;
  const page = pages.get(name) ?? pageOf(program, folder);
  pages.set(name, page);
  return page;
}

/** The client that a page has with one part. @param has which of its files there are */
async function onPage(name: string, has: (when: When) => boolean = () => true) {
  const page = await packed(name);
  const target = mkdtempSync(join(folder, `${name}-`));
  writeFileSync(join(target, "package.json"), '{ "type": "module" }');
  const files = (["start", "later", "rest", "wider"] as const).filter(has).flatMap((when) => page[when]);
  for (const file of files) writeFileSync(join(target, file.name), file.code);
  return import(/* @vite-ignore */ pathToFileURL(join(target, page.start[0]?.name ?? "")).href);
}

async function served(name: string, scene?: object): Promise<string> {
  const post = {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(scene),
  };
  return (await fetch(baseUrl + pathOf(name), scene === undefined ? {} : post)).text();
}

describe.each(methodsOf(whole.calculations))("%s alone", (name) => {
  let calculate: Calculate;
  beforeAll(async () => {
    calculate = await alone("calculations", name);
  });

  it.each(examplesOf(name))("answers %s as the service does", async (_example, scene) => {
    expect(JSON.stringify(await calculate(scene))).toBe(await served(name, scene));
  });

  it("refuses what the service refuses, in its words", async () => {
    const refused = await calculate({ dept_m: 12 }).catch((error) => error);
    const { type, title, status, code, detail, errors } = refused;
    const { request_id: _, ...problem } = JSON.parse(await served(name, { dept_m: 12 }));
    expect({ type, title, status, code, detail, errors }).toEqual(problem);
    expect(refused.name).toBe("InvalidSceneError");
  });
});

describe("a page that left port", () => {
  it("has all once it was ready", async () => {
    const { ready } = await onPage("filterChoice");
    await expect(ready()).resolves.toBeUndefined();
  });

  it("before it was ready computes as ever, and cannot say why a scene is refused", async () => {
    const { client, ready } = await onPage("filterChoice", (when) => when === "start");
    await expect(ready()).rejects.toMatchObject({ name: "ConnectionError", cause: expect.anything() });
    const scene = { water_type: "IB", depth_m: 12 };
    expect(JSON.stringify(await client.calculations.filterChoice(scene))).toBe(
      await served("filterChoice", scene),
    );
    await expect(client.calculations.filterChoice({ dept_m: 12 })).rejects.toMatchObject({
      name: "ConnectionError",
    });
  });
});

describe("a scene that says what a filter is mounted on", () => {
  const scene = {
    ...{ water_type: "IB", depth_m: 12, port_kind: "flat", lens_kind: "wide" },
    ...{ field_of_view_deg: 84, port_thread_mm: 67, lens_interchangeable: false },
  };

  it.each(["diveAdvice", "filterChoice"])(
    "has %s load what answers it, and is then as the service answers",
    async (name) => {
      const { client } = await onPage(name);
      expect(JSON.stringify(await client.calculations[name](scene))).toBe(await served(name, scene));
      const twice = { ...scene, holder: "flip" };
      expect(JSON.stringify(await client.calculations[name](twice))).toBe(await served(name, twice));
    },
  );

  it("is refused as the service refuses it, also where the mount alone is outside the model", async () => {
    const { client } = await onPage("diveAdvice");
    for (const wrong of [
      { ...scene, port_kind: undefined },
      { ...scene, field_of_view_deg: 190 },
    ]) {
      const refused = await client.calculations.diveAdvice(wrong).catch((error: unknown) => error);
      const { request_id: _, ...problem } = JSON.parse(await served("diveAdvice", wrong));
      expect(refused).toMatchObject(problem);
    }
  });

  it("waits until that is here", async () => {
    const { client, ready } = await onPage("diveAdvice", (when) => when !== "wider");
    await expect(client.calculations.diveAdvice(scene)).rejects.toMatchObject({
      name: "ConnectionError",
      message: expect.stringContaining("wait for ready()"),
    });
    await expect(ready()).rejects.toThrow();
  });
});

describe("what only some scenes need", () => {
  const plain = { visibility_m: 20, water_hue: "blue", min_depth_m: 6, max_depth_m: 18 };
  const sample = { red_without: 0.5, green_without: 0.5, blue_without: 0.5, red_with: 0.4 };
  const lamp = { flux_lm: 4000, count: 2, distance_m: 0.8 };
  const curve = [400, 500, 600, 700].map((wavelength_nm, i) => ({
    wavelength_nm,
    transmittance: 0.2 + 0.2 * i,
  }));
  const scenes: Record<string, object> = {
    "the sun of a place and a time": {
      ...plain,
      latitude_deg: -47,
      longitude_deg: -128,
      local_time: "2027-01-16T10:00",
      time_zone: "Etc/GMT+9",
    },
    "ice overhead": { ...plain, overhead: "ice" },
    "video lights": { ...plain, lamps: [lamp] },
    "video lights by night": { ...plain, daylight_basis: "none", lamps: [lamp] },
    "a water known by cards": {
      min_depth_m: 3,
      max_depth_m: 8,
      card_samples: [
        { depth_m: 3, red: 0.24, green: 0.36, blue: 0.38 },
        { depth_m: 9, red: 0.09, green: 0.24, blue: 0.31 },
      ],
      transfer_curve: "linear",
      locked_exposure: true,
      locked_balance: true,
    },
    "a filter known by a card": {
      ...plain,
      filter_samples: [{ ...sample, green_with: 0.15, blue_with: 0.12 }],
    },
    "a filter known by its curve": { ...plain, filter_transmittance: curve },
    "too much light": { water_type: "I", min_depth_m: 0.5, max_depth_m: 2, min_iso: 800 },
    "too little light": { water_type: "5C", min_depth_m: 10, max_depth_m: 20, max_iso: 400 },
  };

  it.each(Object.entries(scenes))(
    "%s waits until it is here, and is then as the service answers",
    async (_, scene) => {
      const without = await onPage("diveAdvice", (when) => when !== "rest");
      await expect(without.client.calculations.diveAdvice(scene)).rejects.toMatchObject({
        name: "ConnectionError",
        message: expect.stringContaining("wait for ready()"),
      });
      const { client } = await onPage("diveAdvice");
      expect(JSON.stringify(await client.calculations.diveAdvice(scene))).toBe(
        await served("diveAdvice", scene),
      );
    },
  );

  const ofLight = methodsOf(whole.calculations).filter((name) => name !== "filterMounting");
  it.each(ofLight)("is nothing that %s waits for where a scene is plain", async (name) => {
    const { client } = await onPage(name, (when) => when === "start");
    expect(JSON.stringify(await client.calculations[name](plain))).toBe(await served(name, plain));
  });

  it("is nothing that the mounting of a filter has at all", async () => {
    const { ready } = await onPage("filterMounting", (when) => when !== "rest");
    await expect(ready()).resolves.toBeUndefined();
  });

  it.each([
    { water_type: "IB", depth_m: 12 },
    { water_type: "3C", sun_elevation_deg: 50, min_depth_m: 4, max_depth_m: 12, min_iso: 200, max_iso: 3200 },
    { ...plain, kit: [{ id: "r", item: "lens_filter", filter_kind: "red", filter_density: 0.9 }] },
    { ...plain, filter_kind: "red", filter_density: 0.9, bottom: "sand", cloud_oktas: 6 },
  ])("is nothing that a plain plan waits for: %o", async (scene) => {
    const { client } = await onPage("diveAdvice", (when) => when === "start");
    expect(JSON.stringify(await client.calculations.diveAdvice(scene))).toBe(
      await served("diveAdvice", scene),
    );
  });
});

it.each(methodsOf(whole.reference))("%s alone is what the service sends", async (name) => {
  const read = await alone("reference", name);
  expect(JSON.stringify(await read({}))).toBe(await served(name));
});

describe("a client of several parts", () => {
  const scene = { water_type: "IB", depth_m: 12 } as const;
  const client = offlineWith([filterChoice, whiteBalance, waterTypes]);

  it("has what it was made from, and nothing else, as the compiler knows", () => {
    expect(Object.keys(client).sort()).toEqual(["calculations", "reference"]);
    expect(Object.keys(client.calculations)).toEqual(["filterChoice", "whiteBalance"]);
    expect(Object.keys(client.reference)).toEqual(["waterTypes"]);
    expectTypeOf<keyof typeof client>().toEqualTypeOf<"calculations" | "reference">();
    expectTypeOf<keyof typeof client.calculations>().toEqualTypeOf<"filterChoice" | "whiteBalance">();
    expectTypeOf(client.calculations.filterChoice).toEqualTypeOf<Api["calculations"]["filterChoice"]>();
    // @ts-expect-error it was not made from it
    expect(client.calculations.attenuation).toBeUndefined();
    // @ts-expect-error nor from any question
    expect(client.quiz).toBeUndefined();
  });

  it("takes the place of any client, where a function asks for no more than it has", async () => {
    const kind = async (any: ApiOf<"filterChoice">) =>
      (await any.calculations.filterChoice(scene)).filter_kind;
    const kinds = [await kind(client), await kind(whole), await kind(new Sunfathom({ baseUrl }))];
    expect(new Set(kinds).size).toBe(1);
    expectTypeOf<OfflineSunfathom>().toExtend<ApiOf<"filterChoice" | "models">>();
    expectTypeOf<ApiOf<"filterChoice">>().not.toExtend<ApiOf<"filterChoice" | "models">>();
  });

  it("cannot be made from nothing", () => {
    // @ts-expect-error no part
    expect(offlineWith([])).toEqual({});
  });

  it("says where an answer comes from, and hears an abort", async () => {
    const { data, meta } = await client.calculations.whiteBalance(scene).withResponse();
    expect(data).toEqual(await whole.calculations.whiteBalance(scene));
    expect(meta).toEqual({ source: "offline", attempts: 1 });
    const { data: table } = await client.reference.waterTypes().withResponse();
    expect(table.water_types.length).toBeGreaterThan(5);
    const signal = AbortSignal.abort();
    await expect(client.calculations.filterChoice(scene, { signal })).rejects.toMatchObject({
      name: "AbortedError",
    });
    await expect(client.reference.waterTypes({ signal })).rejects.toMatchObject({ name: "AbortedError" });
  });

  it("answers for the model that is expected, and for no other", async () => {
    const same = offlineWith([filterChoice, waterTypes], { expectModelVersion: modelVersion });
    expect((await same.calculations.filterChoice(scene)).model.version).toBe(modelVersion);
    const other = offlineWith([filterChoice, waterTypes], { expectModelVersion: "1999.1.1" });
    const refused = await other.calculations.filterChoice(scene).catch((error) => error);
    expect(refused).toMatchObject({ name: "ModelVersionMismatchError", status: 409 });
    // Reference data take no expectation, online either.
    expect((await other.reference.waterTypes()).model_version).toBe(modelVersion);
  });
});

it("knows every kind of problem that a scene can have, by the class that the online client has for it", () => {
  expect(Object.keys(sceneProblemErrors)).toEqual(Object.keys(sceneProblemStatuses).map(problemType));
  for (const [type, Kind] of Object.entries(sceneProblemErrors)) expect(problemErrors[type]).toBe(Kind);
});

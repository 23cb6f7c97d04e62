// Pictures are the same by way of the service and offline, by the package as it is published, too.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { createApp } from "@sunfathom/api";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sceneExamples } from "../../packages/contract/src/index.js";
import {
  InvalidQueryError,
  InvalidSceneError,
  memoryCache,
  NotOfflineError,
  Sunfathom,
} from "../../packages/sdk/src/index.js";
import { offlinePictures } from "../../packages/sdk/src/offline/pictures.js";
import { layPackage } from "../../packages/sdk/src/proof/bundle.test-support.js";
import { buildApp } from "../../services/api/src/build-app.test-support.js";

let app: Awaited<ReturnType<typeof createApp>>;
let baseUrl: string;
let folder: string;
beforeAll(async () => {
  app = await buildApp();
  baseUrl = await app.listen({ host: "127.0.0.1", port: 0 });
  folder = mkdtempSync(join(tmpdir(), "pictures-"));
  await layPackage(folder);
});
afterAll(async () => {
  await app.close();
  rmSync(folder, { recursive: true });
});

const { scene } = sceneExamples.outer_reef_morning;
const mounted = {
  water_type: "IB",
  depth_m: 12,
  port_kind: "flat",
  lens_kind: "wide",
  field_of_view_deg: 84,
  port_thread_mm: 67,
  lens_interchangeable: false,
} as const;
const here = offlinePictures();
type Name = Exclude<keyof typeof here, symbol>;
const names = Object.getOwnPropertyNames(Object.getPrototypeOf(here)).filter(
  (name): name is Name => name !== "constructor",
);
const rejected = (call: Promise<unknown>) =>
  call.then(
    () => undefined,
    (error: unknown) => error,
  );

describe.each(names)("%s", (name) => {
  it("is the same online and offline", async () => {
    const online = new Sunfathom({ baseUrl, cache: memoryCache() });
    const look = { width_px: 360, theme: "dark" } as const;
    expect(await here[name](scene, look)).toBe(await online.pictures[name](scene, look));
  });
});

it("speaks the language of the scene, or else of the client, and takes a scene that says what its filter is mounted on", async () => {
  const online = new Sunfathom({ baseUrl, cache: memoryCache(), language: "de" });
  const german = await offlinePictures({ language: "de" }).lightWithDepth(scene);
  expect(german).toBe(await online.pictures.lightWithDepth(scene));
  const french = { ...mounted, language: "fr", units: "imperial" } as const;
  expect(await offlinePictures({ language: "de" }).lightWithDepth(french)).toBe(
    await online.pictures.lightWithDepth(french),
  );
});

it("leaves pixels to a service, and says so", async () => {
  const error = await rejected(here.lightWithDepth(scene, { format: "png" }));
  expect(error).toBeInstanceOf(NotOfflineError);
  expect(String(error)).toMatch(/PNG.*svg/);
});

it("refuses what a service refuses, in its words", async () => {
  const online = new Sunfathom({ baseUrl, cache: memoryCache() });
  const wrong = { width_px: 20, theme: "Dark" } as never;
  const [look, served] = [
    await rejected(here.lightWithDepth(scene, wrong)),
    await rejected(online.pictures.lightWithDepth(scene, wrong)),
  ] as [InvalidQueryError, InvalidQueryError];
  expect(look).toBeInstanceOf(InvalidQueryError);
  expect(look.errors.map(({ pointer, code }) => [pointer, code])).toEqual([
    ["/width_px", "out_of_range"],
    ["/theme", "not_an_option"],
  ]);
  expect([look.status, look.title, look.detail, look.errors]).toEqual([
    served.status,
    served.title,
    served.detail,
    served.errors,
  ]);
  const misspelt = { dept_m: 12 } as never;
  const [own, theirs] = [
    await rejected(here.lightWithDepth(misspelt)),
    await rejected(online.pictures.lightWithDepth(misspelt)),
  ] as [InvalidSceneError, InvalidSceneError];
  expect(own).toBeInstanceOf(InvalidSceneError);
  expect(own.errors).toEqual(theirs.errors);
});

it("draws from the package as it is published", async () => {
  const page = join(folder, "page.mjs");
  writeFileSync(page, 'export { offlinePictures } from "@sunfathom/sdk/offline/pictures";');
  const { offlinePictures: packed } = await import(/* @vite-ignore */ pathToFileURL(page).href);
  expect(await packed({ language: "es" }).redInPost(scene)).toBe(
    await offlinePictures({ language: "es" }).redInPost(scene),
  );
});

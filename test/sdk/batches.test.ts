// Batches from the client: over HTTP and offline they are the same, and each scene is what a call for it alone is.
import type { createApp } from "@sunfathom/api";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  type BatchItemResult,
  InvalidRequestError,
  NotOfflineError,
  Sunfathom,
} from "../../packages/sdk/src/index.js";
import { batchesWith } from "../../packages/sdk/src/offline/batches.js";
import {
  attenuation,
  filterChoice,
  filterMounting,
  offlineWith,
} from "../../packages/sdk/src/offline/parts.js";
import { buildApp } from "../../services/api/src/build-app.test-support.js";

let app: Awaited<ReturnType<typeof createApp>>;
let online: Sunfathom;
const parts = [attenuation, filterChoice, filterMounting] as const;
const offline = { ...offlineWith(parts), batches: batchesWith(parts) };
beforeAll(async () => {
  app = await buildApp();
  online = new Sunfathom({ baseUrl: await app.listen({ host: "127.0.0.1", port: 0 }) });
});
afterAll(() => app.close());

const varied = {
  operation: "attenuation",
  scene: { water_type: "IB" },
  vary: [{ depth_m: [5, 10, 200] }, { language: ["de", "en"], units: ["metric", "imperial"] }],
} as const;

const items = {
  language: "es",
  items: [
    { id: "a", operation: "filter-choice", scene: { water_type: "IB", depth_m: 12 } },
    {
      id: "b",
      operation: "filter-mounting",
      scene: { port_kind: "flat", lens_kind: "wide", field_of_view_deg: 200 },
    },
    { id: "c", operation: "attenuation", scene: { water_type: "IB", depth_m: 12, sun_elevation_deg: 3 } },
  ],
} as const;

interface Told {
  id: string;
  at?: number[] | undefined;
  answer?: object | undefined;
  problem?: unknown;
}

/** What came, by id, with what tells one problem from another. */
async function all(results: AsyncIterable<BatchItemResult<object>>): Promise<Told[]> {
  const told: Told[] = [];
  for await (const { id, at, answer, problem } of results)
    told.push({
      id,
      at,
      answer,
      problem: problem && { name: problem.name, detail: problem.detail, errors: problem.errors },
    });
  return told.sort((one, other) => one.id.localeCompare(other.id));
}

describe.each([
  ["one scene with what differs", varied, 6],
  ["items", items, 3],
] as const)("%s", (_, batch, count) => {
  it("comes the same over HTTP and offline", async () => {
    const here = await all(offline.batches.run(batch));
    expect(here).toHaveLength(count);
    expect(here.some(({ problem }) => problem !== undefined)).toBe(true);
    expect(here.some(({ answer }) => answer !== undefined)).toBe(true);
    expect(JSON.stringify(await all(online.batches.run(batch)))).toBe(JSON.stringify(here));
  });
});

it("gives what the calculation alone gives", async () => {
  for (const client of [online, offline])
    for await (const { id, answer } of client.batches.run(items))
      if (id === "a")
        expect(answer).toEqual(
          await client.calculations.filterChoice({ ...items.items[0].scene, language: "es" }),
        );
});

it("gives what was asked for of each answer, with its type", async () => {
  for await (const { answer } of online.batches.run(varied, { fields: ["depths.depth_m"] }))
    if (answer !== undefined) expect(Object.keys(answer.depths[0] ?? {})).toEqual(["depth_m"]);
  for await (const { answer } of online.batches.run(varied, { fields: "brief" }))
    if (answer !== undefined) expect(answer.headline.length).toBeGreaterThan(10);
});

it.each([
  [{}, [""]],
  [{ ...varied, vary: [{ dept_m: [3] }], language: "de" }, ["/vary/0/dept_m"]],
  [{ items: [items.items[0], items.items[0]], language: "fr" }, ["/items/1/id"]],
])("refuses %j over HTTP as it does offline", async (batch, pointers) => {
  const refusals = await Promise.all(
    [online, offline].map(async ({ batches }) => {
      const error = await batches
        .run(batch as never)
        .next()
        .catch((cause: unknown) => cause);
      if (!(error instanceof InvalidRequestError)) throw error;
      return { status: error.status, detail: error.detail, errors: error.errors };
    }),
  );
  expect(refusals[0]).toEqual(refusals[1]);
  expect(refusals[0]?.errors.map(({ pointer }) => pointer)).toEqual(pointers);
});

it("stops the service's work where the loop is left", async () => {
  const many = { ...varied, vary: [{ depth_m: Array.from({ length: 4000 }, (_, nth) => 1 + nth / 100) }] };
  for await (const { id } of online.batches.run(many)) {
    expect(id).toMatch(/^\d+$/);
    break;
  }
  // Four of them may be under way at a time.
  for (let nth = 0; nth < 6; nth += 1) for await (const _ of online.batches.run(many)) break;
});

it("of some parts offline has those alone", async () => {
  const few = batchesWith([attenuation]);
  expect(await all(few.run(varied))).toHaveLength(6);
  await expect(few.run(items).next()).rejects.toBeInstanceOf(NotOfflineError);
});

// Random scenes, right and wrong, for every operation that the description has.
import fc from "fast-check";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { objectOf, type Scene, valuesOf } from "./arbitrary.js";
import { ask, type Problem, startApp } from "./ask.js";
import { compatible, overOpening, waters } from "./compatible.js";
import { type Calculation, calculations, type Parameter } from "./description.js";
import { queryOf } from "./query.js";
import { runs, timeout_ms } from "./runs.js";
import { extremeLight } from "./spectral.js";
import { wrongScene } from "./wrong.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

/** Scenes that an operation takes. Of `Scene` it is known which fields go together; others vary their examples. */
function rightScene({ post }: Calculation, share = 6): fc.Arbitrary<Scene> {
  const { body = {}, bodyName, examples } = post;
  if (bodyName === "Scene") {
    const usual = objectOf(body, share);
    // Little else in it, so that it is the light that the answer depends on.
    const extreme = fc
      .tuple(objectOf(body, 40), extremeLight)
      .map(([scene, light]) => withLight(scene, light));
    return fc
      .tuple(
        fc.oneof({ arbitrary: usual, weight: 1 }, { arbitrary: extreme, weight: 1 }),
        fc.nat({ max: 1000 }),
      )
      .map(([scene, pick]) => compatible(scene, pick));
  }
  return fc.constantFrom(...examples).chain((example) => {
    const names = Object.keys(example);
    return fc.subarray(names, { maxLength: Math.min(3, names.length) }).chain((varied) =>
      fc
        .tuple(...varied.map((name) => valuesOf(body.properties?.[name] ?? {})))
        .map((values) => ({
          ...example,
          ...Object.fromEntries(varied.map((name, index) => [name, values[index]])),
        }))
        .map(overOpening),
    );
  });
}

/** What a POST says in its query: how a file is to come. */
function look({ post: { parameters } }: Calculation): fc.Arbitrary<Scene> {
  const ofFile = parameters.filter(({ name }) => name !== "fields");
  return objectOf({ properties: Object.fromEntries(ofFile.map(({ name, schema }) => [name, schema])) }, 2);
}

/** A scene whose finish fits into the format: a color decision list holds no matrix. */
const fitting = (scene: Scene, { format }: Scene): Scene =>
  format === "cdl" && scene["finish"] === "matched" ? { ...scene, finish: "basic_edit" } : scene;

/** A scene under this light: what it says of the same in other ways is taken out. */
function withLight(scene: Scene, light: Scene): Scene {
  const same = (name: string) =>
    ("kd_samples" in light && waters.includes(name)) ||
    ("depth_m" in light && name.endsWith("_depth_m")) ||
    ("lamps" in light && name.startsWith("lamp_"));
  return { ...Object.fromEntries(Object.entries(scene).filter(([name]) => !same(name))), ...light };
}

/** Whether every field of the scene is a query parameter of the GET. */
function fitsQuery(scene: Scene, parameters: readonly Parameter[]): boolean {
  return Object.keys(scene).every((name) => parameters.some((parameter) => parameter.name === name));
}

describe.each(calculations.map((calculation, nth) => ({ ...calculation, nth })))(
  "$post.path",
  (calculation) => {
    const { post, get, nth } = calculation;
    const schema = post.body ?? {};

    it(
      "takes every right scene, by POST and GET alike, and always answers the same",
      async () => {
        const counts: Record<number, number> = {};
        await fc.assert(
          fc.asyncProperty(rightScene(calculation), look(calculation), async (right, asked) => {
            const scene = fitting(right, asked);
            const posted = await ask(app, post, { query: queryOf(asked), body: JSON.stringify(scene) });
            counts[posted.status] = (counts[posted.status] ?? 0) + 1;
            // What only the model can tell is refused by it; a scene whose fields do not go together has been avoided.
            expect(post.bodyName === "Scene" ? [200, 422] : [200, 400, 422], posted.text).toContain(
              posted.status,
            );
            if (get === undefined || !fitsQuery(scene, get.parameters)) return;
            const query = queryOf({ ...scene, ...asked });
            const got = await ask(app, get, { query });
            expect(got.status).toBe(posted.status);
            if (got.status !== 200) return;
            expect(got.text).toBe(posted.text);
            const etag = String(got.headers["etag"]);
            const known = await ask(app, get, { query, headers: { "if-none-match": etag } });
            expect(known.status).toBe(304);
            expect(known.headers["etag"]).toBe(etag);
          }),
          runs(20, nth),
        );
        console.info(`${post.path}: right scenes by status ${JSON.stringify(counts)}`);
        expect(counts[200] ?? 0).toBeGreaterThan(0);
      },
      timeout_ms,
    );

    it(
      "refuses every wrong scene with a pointer to what is wrong",
      async () => {
        await fc.assert(
          fc.asyncProperty(
            rightScene(calculation).chain((scene) => wrongScene(scene, schema)),
            async ({ pointer, value }) => {
              const { status, body } = await ask(app, post, { body: JSON.stringify(value) });
              expect(status).toBe(400);
              const { code, errors = [] } = body as Problem;
              expect(code).toMatch(/^invalid_(scene|request)$/);
              expect(errors.map((error) => error.pointer)).toContain(pointer);
            },
          ),
          runs(30, nth),
        );
      },
      timeout_ms,
    );

    it(
      "takes anything at all for a body without breaking",
      async () => {
        await fc.assert(
          fc.asyncProperty(fc.oneof(fc.json(), fc.string({ unit: "binary" })), async (body) => {
            const { status } = await ask(app, post, { body });
            expect(status).toBe(400);
          }),
          runs(30, nth),
        );
      },
      timeout_ms,
    );

    it(
      "takes anything at all for a query without breaking",
      async () => {
        if (get === undefined) return;
        const name = fc.oneof(
          fc.constantFrom(...get.parameters.map((parameter) => parameter.name)),
          fc.string(),
        );
        const value = fc.oneof(
          fc.string({ unit: "binary" }),
          fc.double().map(String),
          fc.constantFrom("", "1e400", "%", "NaN"),
        );
        const pairs = fc.array(fc.tuple(name, fc.boolean(), value), { minLength: 1, maxLength: 6 });
        await fc.assert(
          fc.asyncProperty(pairs, async (parameters) => {
            const query = parameters
              .map(
                ([key, whole, text]) =>
                  `${encodeURIComponent(key)}${whole ? "=" : ""}${encodeURIComponent(text.replace(/[\ud800-\udfff]/g, ""))}`,
              )
              .join("&");
            const { status } = await ask(app, get, { query });
            expect([200, 400, 409, 422]).toContain(status);
          }),
          runs(30, nth),
        );
      },
      timeout_ms,
    );
  },
);

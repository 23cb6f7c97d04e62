// Every list and every text at its limits, and one past them, for each operation that takes it.
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Scene } from "./arbitrary.js";
import { ask, type Problem, startApp } from "./ask.js";
import { compatible } from "./compatible.js";
import { calculations, isItsTurn, type Operation, plain, type Schema } from "./description.js";
import { isLong, timeout_ms } from "./runs.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

/** A list of `length` entries, made from its example so that entries come in order and are told apart. */
function listOf(schema: Schema, length: number): unknown[] {
  const { properties = {} } = plain(schema.items ?? {});
  const [examples = []] = (schema.examples ?? []) as (Scene | string)[][];
  return Array.from({ length }, (_, index) => {
    const example = examples[index % examples.length];
    if (typeof example === "string") return example;
    const { filter_transmittance, ...entry } = { ...(example ?? {}) } as Scene;
    const { wavelength_nm, id, depth_m } = properties;
    const along = length > 1 ? index / (length - 1) : 0;
    if (wavelength_nm !== undefined) entry["wavelength_nm"] = 380 + 400 * along;
    if (id !== undefined) entry["id"] = `number ${index}`;
    if (depth_m !== undefined) entry["depth_m"] = 3 + 6 * along;
    return entry;
  });
}

function sceneWith({ bodyName, examples }: Operation, name: string, value: unknown): Scene {
  if (bodyName === "Scene") return compatible({ depth_m: 5, [name]: value }, 0);
  const example = examples.find((one) => name in one) ?? examples[0];
  return { ...example, [name]: value };
}

const fields = calculations.flatMap((calculation) => {
  const { post } = calculation;
  return Object.entries(post.body?.properties ?? {})
    .map(([name, raw]) => ({ post, name, schema: plain(raw), title: `${post.path} ${name}` }))
    .filter((_, index) => isLong || isItsTurn(calculation, index));
});
const lists = fields.filter(({ schema }) => schema.maxItems !== undefined);
const texts = fields.filter(({ schema }) => schema.maxLength !== undefined);

it("finds lists and texts to try", () => {
  expect(lists.length).toBeGreaterThan(4);
  expect(texts.length).toBeGreaterThan(1);
});

describe.each(lists)("$title", ({ post, name, schema }) => {
  const { minItems = 0, maxItems = 0 } = schema;

  it(
    `takes ${minItems} and ${maxItems} entries, and not one fewer or more`,
    async () => {
      for (const length of new Set([minItems, maxItems])) {
        const { status, text } = await ask(app, post, {
          body: JSON.stringify(sceneWith(post, name, listOf(schema, length))),
        });
        expect([200, 422], text).toContain(status);
      }
      const outside = [maxItems + 1, ...(minItems > 0 ? [minItems - 1] : [])];
      for (const length of outside) {
        const scene = { ...sceneWith(post, name, listOf(schema, minItems)), [name]: listOf(schema, length) };
        const { status, body } = await ask(app, post, { body: JSON.stringify(scene) });
        expect(status).toBe(400);
        expect((body as Problem).errors).toContainEqual(
          expect.objectContaining({ pointer: `/${name}`, code: "wrong_length" }),
        );
      }
    },
    timeout_ms,
  );
});

describe.each(texts)("$title", ({ post, name, schema }) => {
  const { minLength = 0, maxLength = 0 } = schema;

  it(
    `takes ${minLength} and ${maxLength} characters, and not one fewer or more`,
    async () => {
      // A character beyond the basic plane is one character, though JavaScript counts two.
      for (const character of ["x", "\u{1F30A}"]) {
        for (const [length, fits] of [
          [minLength - 1, false],
          [minLength, true],
          [maxLength, true],
          [maxLength + 1, false],
        ] as const) {
          if (length < 0) continue;
          const scene = { ...sceneWith(post, "depth_m", 5), [name]: character.repeat(length) };
          const { body } = await ask(app, post, { body: JSON.stringify(scene) });
          const errors = (body as Problem).errors ?? [];
          const tooLong = errors.some(
            ({ pointer, code }) => pointer === `/${name}` && code === "wrong_length",
          );
          expect(tooLong).toBe(!fits);
        }
      }
    },
    timeout_ms,
  );
});

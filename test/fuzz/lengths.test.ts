// Every list and every text at its limits, and one past them, wherever they stand. In a long run of every operation that
// takes it; in a short one every other, of one operation, in turn.
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Scene } from "./arbitrary.js";
import { type Answer, ask, type Problem, startApp } from "./ask.js";
import { calculations, isItsTurn, type Operation, plain, type Schema } from "./description.js";
import { type Field, fieldsOf, put } from "./fields.js";
import { isLong, timeout_ms } from "./runs.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const varied = [
  "depth_m",
  "sun_elevation_deg",
  "wind_speed_m_s",
  "cloud_oktas",
  "subject_distance_m",
  "camera_tilt_deg",
  "f_number",
  "iso",
  "shutter_s",
];

/** A list of `length` entries, made from its example so that entries come in order and are told apart. */
function listOf(schema: Schema, length: number): unknown[] {
  const { properties = {} } = plain(schema.items ?? {});
  // What differs in a batch: each entry names a field of its own.
  if (
    schema.items !== undefined &&
    Object.keys(properties).length === 0 &&
    plain(schema.items).type === "object"
  )
    return varied.slice(0, length).map((name) => ({ [name]: [1] }));
  const [examples = []] = (schema.examples ?? []) as (Scene | string)[][];
  return Array.from({ length }, (_, index) => {
    const example = examples[index % examples.length];
    if (typeof example === "string") return example;
    const { filter_transmittance, ...entry } = { ...(example ?? {}) } as Scene;
    const { wavelength_nm, id, depth_m, light_share } = properties;
    const along = length > 1 ? index / (length - 1) : 0;
    if (wavelength_nm !== undefined) entry["wavelength_nm"] = 380 + 400 * along;
    // A forecast has one entry for each hour.
    if (properties["cloud_oktas"] !== undefined)
      Object.assign(entry, {
        date: new Date(Date.UTC(2027, 0, 16 + Math.floor(index / 24))).toISOString().slice(0, 10),
        hour: index % 24,
      });
    if (id !== undefined) entry["id"] = `number ${index}`;
    if (depth_m !== undefined) entry["depth_m"] = 3 + 6 * along;
    // A dive goes on in time, down and up again; what happens on it lies within it, and clips lie apart.
    if (properties["time_s"] !== undefined && properties["iso"] === undefined)
      entry["time_s"] = properties["depth_m"] === undefined ? 200 + index : 3000 * along;
    if (properties["from_clock"] !== undefined)
      Object.assign(entry, {
        from_clock: new Date(Date.UTC(2027, 0, 16, 9, 36) + index * 5000).toISOString().slice(11, 19),
        length_s: 2,
      });
    // A camera's channels see blue, green and red in this order.
    if (wavelength_nm !== undefined && properties["red"] !== undefined)
      for (const [channel, mean] of [
        ["blue", 460],
        ["green", 530],
        ["red", 600],
      ] as const)
        entry[channel] = Math.exp(-(((380 + 400 * along - mean) / 70) ** 2));
    // A recording's curve goes from no light to all of it.
    if (light_share !== undefined) entry["light_share"] = entry["code_share"] = along;
    return entry;
  });
}

/** A right scene with `value`, right or wrong, in the field. */
function sceneWith({ schema, pointer, sceneWith: around }: Field, value: unknown): Scene {
  return put(around(schema.examples?.[0]), pointer, value);
}

function send(post: Operation, scene: Scene): Promise<Answer> {
  return ask(app, post, { body: JSON.stringify(scene) });
}

/** Where an answer finds something too short or too long; it may also be a file. */
function wrongLengths({ body }: Answer): string[] {
  const { errors = [] } = (body ?? {}) as Partial<Problem>;
  return errors.filter(({ code }) => code === "wrong_length").map(({ pointer }) => pointer);
}

/** Lengths at the limits, and one outside them. */
function lengthsAt(min: number, max: number | undefined): { within: Set<number>; outside: number[] } {
  return {
    within: new Set([min, max ?? min]),
    outside: [...(max === undefined ? [] : [max + 1]), ...(min > 0 ? [min - 1] : [])],
  };
}

const isLimitedList = ({ minItems, maxItems }: Schema) => minItems !== undefined || maxItems !== undefined;
const isLimitedText = ({ minLength, maxLength }: Schema) =>
  minLength !== undefined || maxLength !== undefined;

const fields = calculations.flatMap((calculation) => {
  const { post } = calculation;
  return fieldsOf(post)
    .filter((_, index) => isLong || (isItsTurn(calculation, index) && index % 2 === 0))
    .map((field) => ({ post, field, title: `${post.path} ${field.pointer}` }));
});
const lists = fields.filter(({ field }) => isLimitedList(field.schema));
const texts = fields.filter(({ field }) => isLimitedText(field.schema));

/** Limits of length anywhere in a part of the description, however it is put together. */
function limitsIn(part: unknown): number {
  if (typeof part !== "object" || part === null) return 0;
  const schema = part as Schema;
  if (schema.$ref !== undefined) return limitsIn(plain(schema));
  const own = isLimitedList(schema) || isLimitedText(schema) ? 1 : 0;
  return Object.values(part).reduce<number>((sum, inner) => sum + limitsIn(inner), own);
}

it.each(calculations)("finds every list and text of $post.path that has a limit", ({ post }) => {
  const found = fieldsOf(post).filter(({ schema }) => isLimitedList(schema) || isLimitedText(schema));
  expect(found.length).toBe(limitsIn(post.body));
});

it("finds some of every kind", () => {
  expect(lists.length).toBeGreaterThan(5);
  expect(texts.length).toBeGreaterThan(5);
});

describe.each(lists)("$title", ({ post, field }) => {
  const { pointer, schema } = field;
  const { minItems = 0, maxItems } = schema;

  it(
    `takes ${minItems} and ${maxItems} entries, and not one fewer or more`,
    async () => {
      const { within, outside } = lengthsAt(minItems, maxItems);
      for (const length of within) {
        const { status, text } = await send(post, sceneWith(field, listOf(schema, length)));
        expect([200, 422], text).toContain(status);
      }
      for (const length of outside) {
        const answer = await send(post, sceneWith(field, listOf(schema, length)));
        expect(answer.status).toBe(400);
        expect(wrongLengths(answer)).toEqual([pointer]);
      }
    },
    timeout_ms,
  );
});

describe.each(texts)("$title", ({ post, field }) => {
  const { pointer, schema } = field;
  const { minLength = 0, maxLength } = schema;

  it(
    `takes ${minLength} and ${maxLength} characters, and not one fewer or more`,
    async () => {
      const { within, outside } = lengthsAt(minLength, maxLength);
      // A character beyond the basic plane is one character, though JavaScript counts two.
      for (const character of ["x", "\u{1F30A}"]) {
        for (const length of within) {
          const answer = await send(post, sceneWith(field, character.repeat(length)));
          expect(wrongLengths(answer)).toEqual([]);
        }
        for (const length of outside) {
          const answer = await send(post, sceneWith(field, character.repeat(length)));
          expect(answer.status).toBe(400);
          expect(wrongLengths(answer)).toEqual([pointer]);
        }
      }
    },
    timeout_ms,
  );
});

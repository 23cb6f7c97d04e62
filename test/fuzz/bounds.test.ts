// Every number at its bounds and one step outside, every word of every list of words, wherever they stand. In a long run of
// every operation; in a short one every other field, of one operation, in turn.
import { fieldErrorCodes } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Scene } from "./arbitrary.js";
import { ask, type Problem, startApp } from "./ask.js";
import { calculations, isItsTurn, type Operation } from "./description.js";
import { type Field, fieldsOf, put } from "./fields.js";
import { isLong, timeout_ms } from "./runs.js";
import { neighbours } from "./wrong.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

/**
 * Whose numbers hang on each other, piece by piece and sample by sample: rules refuse many at their bounds, their own bounds none. Of
 * their fields, most of which are those of a kit, a short run tries every eighth. */
const ruled = new Set(["/v1/kit-advice", "/v1/trip-advice", "/v1/dive-timelines"]);

const cases = calculations.flatMap((calculation) => {
  const { post, get } = calculation;
  return fieldsOf(post)
    .filter(
      (_, index) => isLong || (isItsTurn(calculation, index) && index % (ruled.has(post.path) ? 8 : 2) === 0),
    )
    .map((field) => ({ post, get, field, title: `${post.path} ${field.pointer}` }));
});
const numbers = cases.filter(
  ({ field: { schema } }) => schema.type === "number" || schema.type === "integer",
);
const words = cases.filter(({ field: { schema } }) => schema.enum !== undefined);

/** A mark that JSON text is put in place of. */
const mark = "\u{1F41A}";

async function send(
  post: Operation,
  scene: Scene,
  text: string,
): Promise<{ status: number; problem: Problem; text: string }> {
  const answer = await ask(app, post, { body: JSON.stringify(scene).replace(`"${mark}"`, text) });
  return { status: answer.status, problem: answer.body as Problem, text: answer.text };
}

/** A right scene in which only the field can be wrong, as it is written by `text`. */
function marked({ pointer, sceneWith }: Field, right: unknown): Scene {
  return put(sceneWith(right), pointer, mark);
}

/** Numbers that a rule ties to one value: a curve begins without light. */
const tied = new Set(["/recording_curve_points/0/light_share"]);

/** Whether a right value is taken, or refused by a rule between fields where those decide. */
function isTaken({ path }: Operation, { status, problem }: { status: number; problem: Problem }): boolean {
  if (status !== 400 || !ruled.has(path)) return status === 200 || status === 422;
  const own: readonly string[] = fieldErrorCodes;
  return (
    (problem.errors ?? []).length > 0 && problem.errors?.every(({ code }) => !own.includes(code)) === true
  );
}

it("finds numbers and words to try", () => {
  expect(numbers.length).toBeGreaterThan(40);
  expect(words.length).toBeGreaterThan(8);
});

describe.each(numbers)("$title", ({ post, get, field }) => {
  const { pointer, schema } = field;
  const { minimum = Number.NaN, maximum = Number.NaN } = schema;
  const name = pointer.slice(1);
  const inQuery = get?.parameters.some((parameter) => parameter.name === name) ?? false;
  const outside = [
    neighbours(minimum)[0],
    neighbours(maximum)[1],
    ...(schema.type === "integer" ? [minimum - 1, maximum + 1] : []),
    -1e308,
    1e308,
  ];

  it(
    "is taken at its bounds",
    async () => {
      for (const value of [minimum, maximum]) {
        const answer = await send(post, field.sceneWith(value), "");
        expect(isTaken(post, answer), answer.text).toBe(true);
      }
    },
    timeout_ms,
  );

  it(
    "is refused one step outside and far out, by POST and GET",
    async () => {
      const scene = marked(field, minimum);
      for (const value of outside) {
        const { status, problem } = await send(post, scene, String(value));
        expect(status).toBe(400);
        expect(problem.errors?.map((error) => error.pointer)).toContain(pointer);
        if (get === undefined || !inQuery) continue;
        const { status: got, body } = await ask(app, get, { query: `${name}=${String(value)}` });
        expect(got).toBe(400);
        expect((body as Problem).errors?.map((error) => error.pointer)).toContain(pointer);
      }
    },
    timeout_ms,
  );

  it(
    "has one zero, and tiny numbers are what they are",
    async () => {
      const scene = marked(field, minimum);
      const zeros = [
        await send(post, scene, "0"),
        await send(post, scene, "-0"),
        await send(post, scene, "-0.0e-99"),
      ];
      const takesZero = minimum <= 0 && maximum >= 0;
      for (const { status, text, problem } of zeros) {
        if (status === 200) expect(text).toBe(zeros[0]?.text);
        else if (!takesZero) expect(problem.errors?.map((error) => error.pointer)).toContain(pointer);
        else expect(isTaken(post, { status, problem }), text).toBe(true);
        expect(status).toBe(zeros[0]?.status);
      }
      for (const [tiny, sign] of [
        ["5e-324", 1],
        ["-1e-320", -1],
      ] as const) {
        if (tied.has(pointer)) continue;
        const { status, problem } = await send(post, scene, tiny);
        const fits = schema.type === "number" && (sign > 0 ? minimum <= 0 && maximum > 0 : minimum < 0);
        if (fits) expect(isTaken(post, { status, problem })).toBe(true);
        else expect(status).toBe(400);
      }
    },
    timeout_ms,
  );

  it(
    "is refused in spellings that no JSON number has",
    async () => {
      const scene = marked(field, minimum);
      for (const text of ["1e400", "-1e400"]) {
        const { status, problem } = await send(post, scene, text);
        expect(status).toBe(400);
        expect(problem.errors?.map((error) => error.pointer)).toContain(pointer);
      }
      const spellings = ["NaN", "Infinity", "-Infinity", "+1", "01", ".5", "5.", "0x10", "1_0", "1,5", "١"];
      for (const text of spellings) {
        const { status, problem } = await send(post, scene, text);
        expect({ status, code: problem.code }).toEqual({ status: 400, code: "malformed_json" });
      }
      if (get === undefined || !inQuery) return;
      for (const text of [...spellings, "1e400", "", " 1", "1 ", "1f", "1n", "true", "null"]) {
        const { status, body } = await ask(app, get, { query: `${name}=${encodeURIComponent(text)}` });
        expect(status).toBe(400);
        expect((body as Problem).errors?.map((error) => error.pointer)).toContain(pointer);
      }
    },
    timeout_ms,
  );
});

describe.each(words)("$title", ({ post, field }) => {
  it(
    "takes each of its words",
    async () => {
      for (const word of field.schema.enum ?? []) {
        // A paper that closes says when.
        const closes =
          word === "after_close" ? { closes_at: new Date(Date.now() + 3_600_000).toISOString() } : {};
        const answer = await send(post, { ...field.sceneWith(word), ...closes }, "");
        expect(isTaken(post, answer), `${word}: ${answer.text}`).toBe(true);
      }
    },
    timeout_ms,
  );
});

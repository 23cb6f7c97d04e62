// More errors than an answer lists before lists that are none, for every operation: a problem, never a failure.
import fc from "fast-check";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, expect, it } from "vitest";
import { ask, type Problem, startApp } from "./ask.js";
import { behindErrors } from "./behind-errors.js";
import { calculations } from "./description.js";
import { fieldsOf } from "./fields.js";
import { runs, timeout_ms } from "./runs.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

/** As many errors as a problem lists. */
const mostErrors = 50;

/** A name as a step of a pointer (RFC 6901, section 3). */
const step = (name: string) => `/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`;

/** Those that take no list have nowhere to put one of another kind. */
const withLists = calculations.filter(({ post }) =>
  fieldsOf(post).some(({ schema }) => schema.type === "array"),
);

it.each(withLists.map(({ post }, nth) => ({ ...post, nth })))(
  "$path tells fifty errors before lists of another kind",
  async (operation) => {
    await fc.assert(
      fc.asyncProperty(behindErrors(operation), async ({ strangers, body }) => {
        const { status, body: answer } = await ask(app, operation, { body: JSON.stringify(body) });
        expect(status).toBe(400);
        const { code, errors = [] } = answer as Problem;
        expect(code).toMatch(/^invalid_(scene|request)$/);
        expect(errors.length).toBeGreaterThanOrEqual(Math.min(mostErrors, strangers.length));
        const told = new Set(errors.map(({ pointer }) => pointer));
        if (errors.length < mostErrors)
          expect(strangers.map(step).filter((one) => !told.has(one))).toEqual([]);
      }),
      runs(12, operation.nth),
    );
  },
  timeout_ms,
);

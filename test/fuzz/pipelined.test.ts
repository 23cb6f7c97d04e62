// Requests of every operation, right and wrong, sent ahead of their answers on one connection that ends anyhow. What is
// answered is answered in order and as described, and the next caller is served.
import fc from "fast-check";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { portOf } from "../hostile/wire.js";
import { check, key, type Problem, startApp } from "./ask.js";
import { type Conversation, conversations, converse } from "./connection.js";
import { calculations, type Operation, operations } from "./description.js";
import { queryOf } from "./query.js";
import { answersIn } from "./raw-answers.js";
import { runs, timeout_ms } from "./runs.js";
import { wrongScene } from "./wrong.js";

/** As many requests of one connection may wait for their answers. */
const most = 16;

let app: FastifyInstance;
let port: number;
beforeAll(async () => {
  // Without a cache, so that each request has its own work done.
  app = await startApp({ answerCacheBytes: 0, unansweredPerConnection: most });
  await app.listen({ host: "127.0.0.1", port: 0 });
  port = portOf(app);
});
afterAll(() => app.close());

/** A client of its own for each connection: what one has left undone is not held against the next. */
let clients = 1;
function nextClient(): { port: number; localAddress: string } {
  clients += 1;
  return { port, localAddress: `127.${clients >> 16}.${(clients >> 8) & 255}.${clients & 255}` };
}

interface Sent {
  isRight: boolean;
  target: string;
  body?: string;
}

function rightOnes({ path, method, examples, parameters }: Operation): Sent[] {
  if (method === "POST")
    return examples.map((example) => ({ isRight: true, target: path, body: JSON.stringify(example) }));
  const names = parameters.map(({ name }) => name);
  if (names.length === 0) return [{ isRight: true, target: path.replace("{name}", "invalid-scene") }];
  const calculation = calculations.find(({ post }) => post.path === path);
  return (calculation?.post.examples ?? [])
    .filter((example) => Object.keys(example).every((name) => names.includes(name)))
    .map((example) => ({ isRight: true, target: `${path}?${queryOf({ ...example })}` }));
}

function wrongOnes({ path, method, examples, body = {} }: Operation): fc.Arbitrary<Sent> {
  if (method === "GET") {
    const query = fc.string().map((text) => `x=${encodeURIComponent(text)}`);
    return query.map((text) => ({ isRight: false, target: `${path.replace("{name}", "no-such")}?${text}` }));
  }
  const text = fc.oneof(
    fc
      .constantFrom(...examples)
      .chain((example) => wrongScene({ ...example }, body))
      .map(({ value }) => JSON.stringify(value)),
    fc.string({ unit: "binary" }),
  );
  return text.map((wrong) => ({ isRight: false, target: path, body: wrong }));
}

/** A request with its number as its id, by which its answer is known. */
function written(
  { method, takesKey }: Operation,
  { target, body }: Sent,
  nth: number,
  last: boolean,
): Buffer {
  const content = Buffer.from(body ?? "");
  const lines = [
    `${method} ${target} HTTP/1.1`,
    "Host: a",
    `X-Request-Id: n${nth}`,
    ...(takesKey ? [`Authorization: Bearer ${key}`] : []),
    ...(body === undefined ? [] : ["Content-Type: application/json", `Content-Length: ${content.length}`]),
    ...(last ? ["Connection: close"] : []),
  ];
  return Buffer.concat([Buffer.from(`${lines.join("\r\n")}\r\n\r\n`), content]);
}

async function conversation(operation: Operation, all: readonly Sent[], how: Conversation) {
  const bytes = Buffer.concat(all.map((sent, nth) => written(operation, sent, nth, nth === all.length - 1)));
  return answersIn(await converse(nextClient(), bytes, how));
}

/** Few mostly; now and then all that may wait, or more. */
const counts = fc.oneof(
  { arbitrary: fc.integer({ min: 1, max: 5 }), weight: 6 },
  { arbitrary: fc.constantFrom(most, most + 1, 2 * most, 100), weight: 1 },
);

const whole: Conversation = { cut: 1, pieces: 1, ending: "waits", after_ms: 0 };

describe.each(operations.map((operation, nth) => ({ ...operation, nth })))("$method $path", (operation) => {
  it(
    "sent ahead and abandoned anyhow harms nobody, and is answered in order",
    async () => {
      const right = rightOnes(operation);
      expect(right).not.toEqual([]);
      const requests = counts.chain((count) =>
        fc.array(fc.oneof(fc.constantFrom(...right), wrongOnes(operation)), {
          minLength: count,
          maxLength: count,
        }),
      );
      await fc.assert(
        fc.asyncProperty(requests, conversations, async (all, how) => {
          const answers = await conversation(operation, all, how);
          for (const [nth, answer] of answers.entries()) {
            // The end of a connection in the middle of a request is told as a request that cannot be read.
            if ((answer.body as Problem | undefined)?.code === "malformed_request") {
              expect([answer.status, nth]).toEqual([400, answers.length - 1]);
              continue;
            }
            expect(answer.headers["x-request-id"]).toBe(`n${nth}`);
            check(operation, answer);
            if (all[nth]?.isRight === true) expect(answer.status).toBe(200);
            else expect([400, 404]).toContain(answer.status);
          }
          // Behind a body that cannot be read the connection is closed, as that answer says.
          const isClosed = answers.at(-1)?.headers["connection"] === "close";
          if (how.ending === "waits" && all.length <= most && !isClosed)
            expect(answers.length).toBe(all.length);
          const [next] = await conversation(operation, right.slice(0, 1), whole);
          expect(next?.status).toBe(200);
        }),
        runs(2, operation.nth),
      );
    },
    timeout_ms,
  );
});

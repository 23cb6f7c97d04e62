import { type Item, itemsFor } from "@sunfathom/quiz";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import {
  keyring,
  paperRequest,
  post,
  quizSettings,
  rightAnswer,
  tokenFor,
  wrongAnswer,
} from "./quiz.test-support.js";

let app: FastifyInstance;
const items = itemsFor(paperRequest);
beforeAll(async () => {
  app = await buildApp({ quiz: quizSettings });
  await app.ready();
});
afterAll(() => app.close());

const q1 = { item: "q1", ...rightAnswer(items[0] as Item) };

describe("a paper", () => {
  it("scores all that there is for right answers, and nothing for wrong ones, of each interaction", async () => {
    const token = await tokenFor();
    const interactions = new Set(items.map(({ interaction }) => interaction));
    expect(interactions.size).toBe(5);
    const sheets = { right: rightAnswer, wrong: wrongAnswer };
    for (const [name, answer] of Object.entries(sheets)) {
      const responses = items.map((item) => ({ item: item.id, ...answer(item) }));
      const { body } = await post(app, "answers", { token, responses }).expect(200);
      const each = name === "right" ? 1 : 0;
      expect(body.grades.map(({ score }: { score: number }) => score)).toEqual(items.map(() => each));
      expect(body).toMatchObject({ score: each * items.length, max_score: items.length, unanswered: [] });
      for (const { right, feedback, solution } of body.grades) {
        expect(right).toBe(each === 1);
        expect(feedback.length).toBeGreaterThan(0);
        expect(solution.steps.length).toBeGreaterThan(0);
        expect(solution.sources.length).toBeGreaterThan(0);
      }
    }
  });

  it("counts what was left out, and says nothing of it", async () => {
    const { body, headers } = await post(app, "answers", {
      token: await tokenFor(),
      responses: [q1],
    }).expect(200);
    expect(body).toMatchObject({ score: 1, max_score: 24, grades: [{ item: "q1", score: 1 }] });
    expect(body.unanswered).toEqual(items.slice(1).map(({ id }) => id));
    for (const { solution } of items.slice(1)) {
      for (const step of solution.steps) expect(JSON.stringify(body)).not.toContain(JSON.stringify(step));
    }
    expect(headers["cache-control"]).toBe("no-store");
  });

  it("lists blanks among the unanswered, however they are written", async () => {
    const number = items.find(({ interaction }) => interaction === "numeric")?.id ?? "";
    const order = items.find(({ interaction }) => interaction === "ordering")?.id ?? "";
    const responses = [q1, { item: number, typed: "" }, { item: order, order: [] }, { item: "q24" }];
    const { body } = await post(app, "answers", { token: await tokenFor(), responses }).expect(200);
    expect(body.unanswered).toEqual(items.slice(1).map(({ id }) => id));
    expect(body.grades.map(({ score }: { score: number }) => score)).toEqual([1, 0, 0, 0]);
    for (const { solution } of body.grades.slice(1)) expect(solution).toBeUndefined();
  });

  it("takes a number as it is typed", async () => {
    const item = items.find(({ interaction }) => interaction === "numeric");
    if (item?.interaction !== "numeric") throw new Error("no such question");
    const typed = `${String(item.value).replace(".", ",")} ${item.unit}`;
    const { body } = await post(app, "answers", {
      token: await tokenFor(),
      responses: [{ item: item.id, typed }],
    }).expect(200);
    expect(body.score).toBe(1);
  });

  it("may be handed in empty", async () => {
    const { body } = await post(app, "answers", { token: await tokenFor(), responses: [] }).expect(200);
    expect(body).toMatchObject({ score: 0, grades: [] });
  });

  it("is marked the same again: nothing is stored", async () => {
    const body = { token: await tokenFor(), responses: [q1] };
    const marked = async () => (await post(app, "answers", body).expect(200)).text;
    expect(await marked()).toBe(await marked());
  });
});

// RFC 7493, section 2.3: names within an object are unique.
it("marking takes no query, and no name twice", async () => {
  const own = await buildApp({ quiz: quizSettings });
  const ask = async (payload: string, query = "") => {
    const headers = { "content-type": "application/json" };
    const reply = await own.inject({ method: "POST", url: `/v1/quiz-answers${query}`, headers, payload });
    return [reply.statusCode, reply.json().code];
  };
  const token = JSON.stringify(await tokenFor());
  expect(await ask(`{"token":${token},"responses":[]}`)).toEqual([200, undefined]);
  expect(await ask(`{"token":${token},"responses":[]}`, "?a=1")).toEqual([400, "invalid_query"]);
  expect(await ask(`{"token":${token},"token":${token},"responses":[]}`)).toEqual([400, "invalid_request"]);
  await own.close();
});

describe("answers that do not fit", () => {
  const other = items.find(({ interaction }) => interaction === "numeric")?.id;

  it.each<[string, object[], string, string]>([
    [
      "a question that is not there",
      [q1, { item: "q25", choices: ["A"] }],
      "/responses/1/item",
      "item_unknown",
    ],
    [
      "a name that every object has",
      [{ item: "constructor", number: 1 }],
      "/responses/0/item",
      "item_unknown",
    ],
    ["two answers to one question", [q1, q1], "/responses/1/item", "response_malformed"],
    ["another unit", [{ item: other, typed: "3 furlongs" }], "/responses/0/typed", "response_malformed"],
    ["choices for a number", [{ item: other, choices: ["A"] }], "/responses/0/choices", "response_malformed"],
  ])("are refused by place: %s", async (_what, responses, pointer, code) => {
    const { body } = await post(app, "answers", { token: await tokenFor(), responses }).expect(422);
    expect(body).toMatchObject({ code: "responses_do_not_fit", errors: [{ pointer, code }] });
  });

  it("in form are told apart from those in content", async () => {
    const responses = [{ item: "q1", choices: "A" }, { number: 1 }];
    const { body } = await post(app, "answers", { token: "t", responses }).expect(400);
    const pointers = body.errors.map(({ pointer }: { pointer: string }) => pointer);
    expect(pointers).toEqual(["/responses/0/choices", "/responses/1/item"]);
    expect(body.code).toBe("invalid_request");
  });

  it("name a member that stands twice", async () => {
    const { body } = await app
      .inject({
        method: "POST",
        url: "/v1/quiz-answers",
        headers: { "content-type": "application/json" },
        payload: '{"token":"t","token":"u","responses":[]}',
      })
      .then((reply) => ({ body: reply.json() }));
    expect(body).toMatchObject({ code: "invalid_request", errors: [{ code: "repeated_field" }] });
  });
});

describe("a token", () => {
  const mark = (token: string) => post(app, "answers", { token, responses: [q1] });

  it("is refused with any one of its characters changed", async () => {
    const token = await tokenFor();
    expect(token.split(".")).toHaveLength(4);
    await mark(token).expect(200);
    for (let at = 0; at < token.length; at++) {
      const sign = token[at] === "A" ? "B" : "A";
      const { status, body } = await mark(token.slice(0, at) + sign + token.slice(at + 1));
      expect({ at, status, code: body.code }).toEqual({ at, status: 422, code: "token_refused" });
      expect(body.errors).toMatchObject([{ pointer: "/token" }]);
    }
  });

  it("is refused cut short, lengthened, put together from two, or made up", async () => {
    const [one, two] = [await tokenFor(), await tokenFor()];
    const [version, id, nonce, sealed] = one.split(".");
    const [, , otherNonce, otherSealed] = two.split(".");
    const made = [
      one.slice(0, -1),
      one.slice(0, -20),
      `${one}A`,
      `${one}.${sealed}`,
      `${one}=`,
      ` ${one}`,
      [version, id, nonce, otherSealed].join("."),
      [version, id, otherNonce, sealed].join("."),
      [version, "before", nonce, sealed].join("."),
      [version, "constructor", nonce, sealed].join("."),
      "sq1.now..",
      "sq1",
      ".",
      "\u{1F41A}",
    ];
    for (const token of made) expect((await mark(token).expect(422)).body.code).toBe("token_refused");
  });

  it("is refused after its time, and not a moment before", async () => {
    const now = Math.floor(Date.now() / 1000) * 1000;
    vi.useFakeTimers({ toFake: ["Date"], now });
    try {
      const token = await tokenFor(undefined, { lifetime_s: 3600 });
      vi.setSystemTime(now + 3600_000 - 1);
      await mark(token).expect(200);
      vi.setSystemTime(now + 3600_000);
      const { body } = await mark(token).expect(422);
      expect(body).toMatchObject({ code: "token_expired", errors: [{ pointer: "/token" }] });
    } finally {
      vi.useRealTimers();
    }
  });

  it("of a key that was turned out of its place still opens, and of one that was taken out no more", async () => {
    const old = await tokenFor(undefined, { ring: { ...keyring, current: "before" } });
    expect(old).toContain(".before.");
    await mark(old).expect(200);
    const ring = { current: "now", keys: { now: keyring.keys["now"] as Uint8Array<ArrayBuffer> } };
    const turned = await buildApp({
      quiz: {
        ...quizSettings,
        keyring: ring,
      },
    });
    await turned.ready();
    const { body } = await post(turned, "answers", { token: old, responses: [q1] }).expect(422);
    expect(body).toMatchObject({ code: "token_refused", errors: [{ code: "token_key_unknown" }] });
    await post(turned, "answers", { token: await tokenFor(), responses: [q1] }).expect(200);
    await turned.close();
  });

  it("of another service with a key of the same name is refused", async () => {
    const ring = { current: "now", keys: { now: new Uint8Array(32).fill(9) } };
    const { body } = await mark(await tokenFor(undefined, { ring })).expect(422);
    expect(body).toMatchObject({ code: "token_refused", errors: [{ code: "token_refused" }] });
  });

  it("of questions that are no longer made is a conflict", async () => {
    const { body } = await mark(await tokenFor(items.slice(1))).expect(409);
    expect(body).toMatchObject({ code: "questions_changed", errors: [{ pointer: "/token" }] });
  });

  it("of a process without a key of its own ends with it", async () => {
    const draw = async () => {
      const own = await buildApp();
      await own.ready();
      return own;
    };
    const [one, two] = [await draw(), await draw()];
    const { body } = await post(one, "items", { level: "beginner", count: 1 }).expect(200);
    const answers = { token: body.token, responses: [] };
    await post(one, "answers", answers).expect(200);
    await post(two, "answers", answers).expect(422);
    await Promise.all([one.close(), two.close()]);
  });
});

// When marks are told: at once in practice, after its close for a test, and nothing that asking again could turn into a key.
import { type Item, itemsFor } from "@sunfathom/quiz";
import { quizTexts } from "@sunfathom/words";
import type { FastifyInstance } from "fastify";
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import {
  instructorKey,
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
afterEach(() => {
  vi.useRealTimers();
});

const bearer = { authorization: `Bearer ${instructorKey}` };
const sheet = (answer: (item: Item) => object) => items.map((item) => ({ item: item.id, ...answer(item) }));
const HOUR_S = 3600;
const inAnHour = () => new Date(Date.now() + 1000 * HOUR_S).toISOString();

describe("a test that has not closed", () => {
  it("gives one and the same answer, whatever is right: no score, feedback, solution or key", async () => {
    const token = await tokenFor(undefined, { open_s: HOUR_S });
    const told = new Set<string>();
    for (const responses of [sheet(rightAnswer), sheet(wrongAnswer), [], sheet(rightAnswer).slice(0, 1)]) {
      const { body } = await post(app, "answers", { token, responses }).expect(403);
      expect(body).toMatchObject({ code: "marks_held_back", errors: [{ pointer: "/token" }] });
      told.add(JSON.stringify({ ...body, request_id: "" }));
    }
    expect(told.size).toBe(1);
  });

  it("still says where an answer does not fit its question, which anyone can see from the question", async () => {
    const token = await tokenFor(undefined, { open_s: HOUR_S });
    const responses = [
      { item: "q1", choices: ["A"] },
      { item: "q99", number: 1 },
    ];
    const { body } = await post(app, "answers", { token, responses });
    expect(body).toMatchObject({ code: "responses_do_not_fit" });
  });

  it("is marked for the instructor's key, and for no other", async () => {
    const token = await tokenFor(undefined, { open_s: HOUR_S });
    const sent = { token, responses: sheet(rightAnswer) };
    const { body } = await post(app, "answers", sent, bearer).expect(200);
    expect(body.score).toBe(items.length);
    for (const { solution } of body.grades) expect(solution.steps.length).toBeGreaterThan(0);
    const wrong = await post(app, "answers", sent, { authorization: `${bearer.authorization}x` }).expect(401);
    expect(wrong.body.code).toBe("unauthorized");
    expect(wrong.headers["www-authenticate"]).toContain("invalid_token");
  });

  it("is held back from everybody where no instructor's key is configured", async () => {
    const without = await buildApp({
      quiz: { ...quizSettings, instructorKey: undefined },
    });
    await without.ready();
    const sent = { token: await tokenFor(undefined, { open_s: HOUR_S }), responses: [] };
    const { body } = await post(without, "answers", sent, bearer).expect(403);
    expect(body.code).toBe("marks_held_back");
    await without.close();
  });

  it("is marked from its close on, and as long after it as any paper", async () => {
    const asked = { level: "beginner", count: 24, release: "after_close", closes_at: inAnHour() };
    const { body: paper } = await post(app, "items", asked).expect(200);
    const closes_ms = Math.floor(Date.parse(asked.closes_at) / 1000) * 1000;
    expect(paper).toMatchObject({ release: "after_close", closes_at: new Date(closes_ms).toISOString() });
    expect(Date.parse(paper.expires)).toBe(closes_ms + 1000 * quizSettings.tokenLifetime_s);
    const at = async (now: number) => {
      vi.useFakeTimers({ toFake: ["Date"], now });
      return (await post(app, "answers", { token: paper.token, responses: [] })).body;
    };
    expect((await at(closes_ms - 1)).code).toBe("marks_held_back");
    expect((await at(closes_ms)).max_score).toBe(24);
    expect((await at(Date.parse(paper.expires) - 1)).max_score).toBe(24);
    expect((await at(Date.parse(paper.expires))).code).toBe("token_expired");
  });
});

describe("a practice paper", () => {
  it("is what is drawn unless asked otherwise, and says so", async () => {
    for (const asked of [{}, { release: "at_once" }]) {
      const { body } = await post(app, "items", { level: "beginner", count: 1, ...asked }).expect(200);
      expect(body.release).toBe("at_once");
      expect(body).not.toHaveProperty("closes_at");
    }
  });

  const blank = (item: Item) => (item.interaction === "matching" ? { pairs: [] } : { choices: [] });
  const asksForOne = items.filter(({ interaction }) => /choice|matching/.test(interaction));

  it("opens nothing to a blank: neither solution nor which options were right", async () => {
    const token = await tokenFor();
    const responses = asksForOne.map((item) => ({ item: item.id, ...blank(item) }));
    expect(responses.length).toBeGreaterThan(8);
    const { body } = await post(app, "answers", { token, responses }).expect(200);
    for (const { score, right, feedback, solution } of body.grades) {
      expect({ score, right, solution }).toEqual({ score: 0, right: false, solution: undefined });
      expect(feedback).toEqual([{ text: quizTexts.common.blank }]);
    }
  });

  it("opens blanks to the instructor's key", async () => {
    const responses = asksForOne.map((item) => ({ item: item.id, ...blank(item) }));
    const { body } = await post(app, "answers", { token: await tokenFor(), responses }, bearer).expect(200);
    for (const { score, solution } of body.grades) {
      expect(score).toBe(0);
      expect(solution.steps.length).toBeGreaterThan(0);
    }
  });
});

describe("a close", () => {
  const year = new Date().getUTCFullYear();

  it.each<[object, number, string, string]>([
    [{ release: "after_close" }, 400, "invalid_request", "closes_at_missing"],
    [{ closes_at: inAnHour() }, 400, "invalid_request", "closes_at_without_effect"],
    [{ release: "at_once", closes_at: inAnHour() }, 400, "invalid_request", "closes_at_without_effect"],
    [{ release: "after_close", closes_at: "tomorrow" }, 400, "invalid_request", "wrong_form"],
    [{ release: "after_close", closes_at: `${year + 1}-02-01` }, 400, "invalid_request", "wrong_form"],
    [
      { release: "after_close", closes_at: "2020-01-01T00:00:00Z" },
      422,
      "paper_not_possible",
      "closes_at_out_of_range",
    ],
    [
      { release: "after_close", closes_at: `${year + 3}-01-01T00:00:00Z` },
      422,
      "paper_not_possible",
      "closes_at_out_of_range",
    ],
    [
      { release: "after_close", closes_at: `${year + 1}-02-30T00:00:00Z` },
      422,
      "paper_not_possible",
      "closes_at_out_of_range",
    ],
  ])("%j is refused with %i", async (asked, status, code, error) => {
    const { body } = await post(app, "items", { level: "beginner", count: 1, ...asked }).expect(status);
    expect(body).toMatchObject({ code, errors: [{ pointer: "/closes_at", code: error }] });
    const packed = { level: "beginner", count: 1, title: "Colour", ...asked };
    expect((await post(app, "packages", packed).expect(status)).body).toMatchObject({
      code,
      errors: [{ code: error }],
    });
  });

  it("may be written with an offset", async () => {
    const local = new Date(Date.now() + 1000 * (HOUR_S + 2 * 3600))
      .toISOString()
      .replace(/\.\d+Z$/, "+02:00");
    const asked = { level: "beginner", count: 1, release: "after_close", closes_at: local };
    const { body } = await post(app, "items", asked).expect(200);
    expect(Date.parse(body.closes_at)).toBe(Date.parse(local));
  });
});

// Whatever is sent in place of a request, the quiz answers with a problem that says what was wrong.
describe("a body of a wrong form", () => {
  const bodies = [
    "null",
    "[]",
    "1",
    '"text"',
    "{}",
    '{"token":null,"responses":null}',
    '{"token":{},"responses":{}}',
    '{"token":"","responses":[]}',
    `{"token":"${"a".repeat(5000)}","responses":[]}`,
    '{"token":"sq1.now.AAAAAAAAAAAAAAAA.","responses":[]}',
    '{"token":"t","responses":[null]}',
    '{"token":"t","responses":[[[]]]}',
    '{"token":"t","responses":[{"item":"q1","choices":[null]}]}',
    '{"token":"t","responses":[{"item":"q1","pairs":[{"left":"L1"}]}]}',
    '{"token":"t","responses":[{"item":"q1","number":1e999}]}',
    '{"token":"t","responses":[{"item":"__proto__","toString":1}]}',
    `{${Array.from({ length: 60 }, (_, i) => `"z${i}":0`).join()},"responses":{},"templates":{},"title":[]}`,
    '{"level":"beginner","count":"3","title":7,"templates":"red_left","closes_at":5,"release":[]}',
    '{"level":"beginner","count":1e999,"title":""}',
    `{"level":"beginner","count":1,"title":"x","templates":[${Array(300).fill('"red_left"').join()}]}`,
  ];

  it.each(["items", "answers", "packages"])("is refused by /v1/quiz-%s", async (name) => {
    const headers = { "content-type": "application/json" };
    for (const payload of bodies) {
      const reply = await app.inject({ method: "POST", url: `/v1/quiz-${name}`, headers, payload });
      const told = `${payload.slice(0, 80)} ${reply.payload.slice(0, 200)}`;
      expect(reply.statusCode, told).toBeGreaterThanOrEqual(400);
      expect(reply.statusCode, told).toBeLessThan(500);
      expect(reply.headers["content-type"], told).toContain("application/problem+json");
    }
  });
});

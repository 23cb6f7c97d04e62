import { quizErrorCodes } from "@sunfathom/contract";
import { QuizProblem, type QuizProblemCode, type QuizRefusal } from "@sunfathom/quiz";
import type { QuizRefusals } from "@sunfathom/words";
import Fastify from "fastify";
import { describe, expect, it } from "vitest";
import { sendQuizProblem } from "./problems.js";

function answerTo(error: unknown) {
  const app = Fastify();
  app.get("/", (_, reply) => sendQuizProblem(reply, error));
  return app.inject("/");
}

// What the contract's own list says that each problem of the quiz can name.
const listed = new Map(
  Object.entries(quizErrorCodes).flatMap(([problem, errors]) =>
    errors.map((code) => [code as string, problem] as const),
  ),
);
const nothing = {};
const refusals: { [Code in QuizProblemCode]: QuizRefusals[Code] } = {
  count_out_of_range: { most: 200 },
  template_unknown: { template: "red" },
  template_not_at_level: { template: "kelvin_order", levels: ["beginner"] },
  too_few_questions: { found: 7 },
  response_malformed: { case: "entry_repeated" },
  item_unknown: { item: "q99" },
  token_malformed: nothing,
  token_key_unknown: nothing,
  token_refused: nothing,
  token_expired: { expired_at: "2026-05-01T00:00:00.000Z" },
  questions_changed: { model_version: "0.1.0" },
  closes_at_missing: nothing,
  closes_at_without_effect: nothing,
  closes_at_out_of_range: { case: "past", most_days: 366 },
  release_without_effect: nothing,
  version_without_effect: nothing,
  practice_needs_keys: nothing,
  not_closed_yet: { closes_at: "2026-05-01T00:00:00.000Z" },
};
const all = Object.entries(refusals).map(([code, parameters]) => ({ code, parameters }) as QuizRefusal);

describe("what the quiz refuses", () => {
  it("is all that the contract lists, and two that its schema has refused before", () => {
    const unlisted = all.map(({ code }) => code).filter((code) => !listed.has(code));
    expect(unlisted).toEqual(["count_out_of_range", "template_unknown"]);
    expect(listed.size).toBe(all.length - unlisted.length);
  });

  it.each(all)("as $code is its problem, which says what is allowed", async (refusal) => {
    const reply = await answerTo(new QuizProblem(refusal, "place/0"));
    const body = reply.json();
    const { code, parameters } = refusal;
    const [error] = body.errors;
    expect(body).toMatchObject({
      code: listed.get(code) ?? "invalid_request",
      status: reply.statusCode,
      detail: `/place/0: ${error.message}`,
    });
    expect(error).toMatchObject({ pointer: "/place/0", code, parameters });
    expect(error.message).toMatch(/^\w.{10}.*\.$/);
    expect(error.allowed).toMatch(/^\w.{10}/);
  });

  it("without a place is told of the whole", async () => {
    const { errors } = (await answerTo(new QuizProblem({ code: "token_refused", parameters: {} }))).json();
    expect(errors[0].pointer).toBe("/");
  });

  it("is told apart from a failure, which is no problem of the quiz", async () => {
    const reply = await answerTo(new Error("broken inside"));
    expect(reply.statusCode).toBe(500);
    expect(reply.json().message).toBe("broken inside");
  });
});

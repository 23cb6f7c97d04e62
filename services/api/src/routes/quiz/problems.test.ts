import { quizErrorCodes } from "@sunfathom/contract";
import { QuizProblem, type QuizProblemCode } from "@sunfathom/quiz";
import Fastify from "fastify";
import { describe, expect, it } from "vitest";
import { sendQuizProblem } from "./problems.js";

function answerTo(error: unknown) {
  const app = Fastify();
  app.get("/", (_, reply) => sendQuizProblem(reply, error));
  return app.inject("/");
}

// The contract's own list of what each problem of the quiz can name.
const listed = Object.entries(quizErrorCodes).flatMap(([problem, errors]) =>
  Object.keys(errors).map((code): [QuizProblemCode, string] => [code as QuizProblemCode, problem]),
);

describe("what the quiz refuses", () => {
  it.each([...listed, ["count_out_of_range", "invalid_request"], ["template_unknown", "invalid_request"]] as [
    QuizProblemCode,
    string,
  ][])("as %s is the problem %s, which says what is allowed", async (code, problem) => {
    const reply = await answerTo(new QuizProblem(code, "That is wrong.", "place/0"));
    const body = reply.json();
    expect(body).toMatchObject({
      code: problem,
      status: reply.statusCode,
      detail: "/place/0: That is wrong.",
      errors: [{ pointer: "/place/0", code, message: "That is wrong." }],
    });
    expect(body.errors[0].allowed).toMatch(/^\w.{10}/);
  });

  it("without a place is told of the whole", async () => {
    const { errors } = (await answerTo(new QuizProblem("token_refused", "That is wrong."))).json();
    expect(errors[0].pointer).toBe("/");
  });

  it("is told apart from a failure, which is no problem of the quiz", async () => {
    const reply = await answerTo(new Error("broken inside"));
    expect(reply.statusCode).toBe(500);
    expect(reply.json().message).toBe("broken inside");
  });
});

import { problem } from "@sunfathom/answers";
import { problems } from "@sunfathom/words/en/problems";
import Fastify from "fastify";
import { expect, it } from "vitest";
import { sendProblem, sendRefusal } from "./send-problem.js";

const error = { pointer: "/depth_m", code: "out_of_range", message: "Too deep.", allowed: "0 to 100" };

async function answers() {
  const app = Fastify({ genReqId: () => "one" });
  app.get("/plain", (_, reply) => sendRefusal(reply, { because: "nothing_for_you" }));
  app.get("/full", (_, reply) =>
    sendProblem(reply, problem("invalid_scene", problems, "Too deep.", [error])),
  );
  return { plain: await app.inject("/plain"), full: await app.inject("/full") };
}

// RFC 9457, sections 3 and 3.1: the media type, and members type, title, status and detail.
it("a problem has the status that it tells, its media type and the request's id, and is not to be kept", async () => {
  const { plain } = await answers();
  expect(plain.statusCode).toBe(404);
  expect(plain.headers).toMatchObject({
    "content-type": "application/problem+json; charset=utf-8",
    "cache-control": "no-store",
  });
  expect(plain.json()).toEqual({
    type: "/problems/not-found",
    title: expect.any(String),
    status: 404,
    detail: expect.any(String),
    code: "not_found",
    request_id: "one",
  });
});

it("its errors come last, after the id, for whoever reads it by eye", async () => {
  const { full } = await answers();
  expect(full.statusCode).toBe(400);
  expect(full.json().errors).toEqual([error]);
  expect(Object.keys(full.json()).slice(-2)).toEqual(["request_id", "errors"]);
});

import { maxErrors } from "@sunfathom/contract";
import Fastify from "fastify";
import { expect, it } from "vitest";
import { refuseQuery } from "./refuse-query.js";

function ask(url: string, method: "GET" | "POST" = "GET") {
  const app = Fastify();
  app.route({ method: ["GET", "POST"], url: "/", onRequest: refuseQuery, handler: () => "taken" });
  return app.inject({ method, url });
}

it.each(["/", "/?", "/?&&"])("%s has no parameters, and is taken", async (url) => {
  expect((await ask(url)).body).toBe("taken");
});

it("names each parameter, and the method that takes none", async () => {
  const reply = await ask("/?page=2&a%2Fb", "POST");
  expect(reply.statusCode).toBe(400);
  expect(reply.json()).toMatchObject({
    code: "invalid_query",
    detail: "POST takes no query parameters at this path.",
    errors: [
      { pointer: "/page", code: "unknown_field" },
      // RFC 6901, section 3: a slash in a name is written ~1.
      { pointer: "/a~1b", code: "unknown_field" },
    ],
  });
});

it("names no more than the most errors that a problem lists", async () => {
  const names = Array.from({ length: maxErrors + 5 }, (_, index) => `name${index}`);
  const { errors } = (await ask(`/?${names.join("&")}`)).json();
  expect(errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual(
    names.slice(0, maxErrors).map((name) => `/${name}`),
  );
});

import Fastify from "fastify";
import { describe, expect, it } from "vitest";
import { refuseOtherForms } from "./not-acceptable.js";

function ask(url: string, accept?: string) {
  const app = Fastify();
  app.addHook("onRequest", refuseOtherForms);
  app.get("/json", { schema: {} }, () => "taken");
  app.get("/zip", { schema: {}, config: { answersIn: "application/zip" } }, () => "taken");
  app.get("/both", { schema: {}, config: { answersIn: ["application/json", "text/html"] } }, () => "taken");
  app.get("/hidden", { schema: { hide: true } }, () => "taken");
  app.get("/undescribed", () => "taken");
  return app.inject({ url, headers: accept === undefined ? {} : { accept } });
}

// RFC 9110, section 12.5.1 and 15.5.7.
describe("a route that answers in one form", () => {
  it.each([
    ["/json", undefined],
    ["/json", "application/json"],
    ["/json", "text/html, */*;q=0.1"],
    ["/both", "text/html"],
    ["/both", "text/*"],
    ["/both", "application/json"],
    ["/zip", undefined],
    ["/zip", "application/zip"],
    // These have forms of their own.
    ["/hidden", "text/html"],
    ["/undescribed", "text/html"],
  ])("%s takes Accept: %s", async (url, accept) => {
    const { statusCode, body } = await ask(url, accept);
    expect([statusCode, body]).toEqual([200, "taken"]);
  });

  it.each([
    ["/json", "text/html", "application/json"],
    ["/json", "application/zip", "application/json"],
    ["/zip", "application/json", "application/zip"],
    ["/both", "application/zip", "application/json and text/html"],
  ])("%s refuses Accept: %s, and names its form", async (url, accept, form) => {
    const reply = await ask(url, accept);
    expect(reply.statusCode).toBe(406);
    expect(reply.json().code).toBe("not_acceptable");
    expect(reply.json().detail).toContain(form);
  });
});
